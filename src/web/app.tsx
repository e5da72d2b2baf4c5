import { Banner } from './frame/banner.tsx';
import { Notes } from './frame/notes.tsx';
import { TopStrip } from './frame/top-strip.tsx';
import { ScreenOf } from './screens/screen-of.tsx';
import { begun } from './state/begin.ts';
import { design } from './state/current.ts';
import { type Screen, screen } from './state/screen.ts';
import { words } from './words/en.ts';

/** Screens that begin with their own title, where others begin with the drawing. */
const TITLED: ReadonlySet<Screen> = new Set(['designs', 'study', 'own-shape']);

/** The page: what stands always in view (order of work, undo, findings) round the screen that is shown. */
export function App() {
  const name = screen.value;
  const isWork = name !== 'designs' && name !== 'own-shape';
  return (
    <div class={`page page-${name}`}>
      <button type="button" class="skip" onClick={toMain}>
        {words.skip(words.screens[name])}
      </button>
      <TopStrip />
      <main id="main" tabIndex={-1} aria-label={words.screens[name]}>
        {TITLED.has(name) ? null : <h1 class="hidden-label">{words.screens[name]}</h1>}
        {begun.value ? <ScreenOf name={name} /> : <p class="waiting">{words.loading}</p>}
      </main>
      {isWork && design.value !== undefined ? <Notes /> : null}
      <Banner />
    </div>
  );
}

/** A button, not a link: the fragment of the address names the screen. */
function toMain(): void {
  document.getElementById('main')?.focus();
}
