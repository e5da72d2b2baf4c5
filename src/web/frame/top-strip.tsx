import { design, redo, redoWords, undo, undoWords } from '../state/current.ts';
import { hashOf, type Screen, screen, WORK_SCREENS } from '../state/screen.ts';
import { Button } from '../ui/button.tsx';
import { words } from '../words/en.ts';
import { REDO_KEYS, UNDO_KEYS } from './undo-keys.ts';

const BESIDE = ['study', 'own-shape'] as const;

/** Name of the design, the order of work, undo and redo. */
export function TopStrip() {
  return (
    <header class="top-strip">
      <a class="design-name" href={hashOf('designs')}>
        <span class="app-name">{words.app}</span>
        <span class="name">{design.value?.name ?? words.screens.designs}</span>
      </a>
      <nav aria-label={words.steps}>
        <ol>
          {WORK_SCREENS.map((name, at) => (
            <li key={name}>
              <StepLink name={name} at={at} />
            </li>
          ))}
          {BESIDE.map((name) => (
            <li key={name} class="beside">
              <StepLink name={name} />
            </li>
          ))}
        </ol>
      </nav>
      <div class="history">
        <Button
          look="quiet"
          aria-keyshortcuts={UNDO_KEYS}
          disabled={undoWords.value === undefined}
          title={undoWords.value === undefined ? words.undo : words.undoWhat(undoWords.value)}
          onClick={undo}
        >
          {words.undo}
        </Button>
        <Button
          look="quiet"
          aria-keyshortcuts={REDO_KEYS}
          disabled={redoWords.value === undefined}
          title={redoWords.value === undefined ? words.redo : words.redoWhat(redoWords.value)}
          onClick={redo}
        >
          {words.redo}
        </Button>
      </div>
    </header>
  );
}

function StepLink({ name, at }: { readonly name: Screen; readonly at?: number }) {
  const isHere = screen.value === name;
  return (
    <a href={hashOf(name)} aria-current={isHere ? 'page' : undefined}>
      {at === undefined ? null : (
        <span class="nr" aria-hidden="true">
          {at + 1}
        </span>
      )}
      {words.screens[name]}
    </a>
  );
}
