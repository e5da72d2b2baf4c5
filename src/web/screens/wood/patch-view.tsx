import { useState } from 'preact/hooks';
import { type Design, usualPatch } from '../../../design/index.ts';
import { SceneLines } from '../../drawing/scene-lines.tsx';
import type { ShownPatch } from '../../engine/answers/patches.ts';
import { useAnswer } from '../../engine/use-answer.ts';
import { PrintProgress } from '../../print/print-progress.tsx';
import { printToFile } from '../../print/printer.ts';
import { change } from '../../state/current.ts';
import { Button } from '../../ui/button.tsx';
import { words } from '../../words/en.ts';
import { PatchBench } from './patch-bench.tsx';
import { PatchFields } from './patch-fields.tsx';

const said = words.wood.mending;

/** Patches for flaws: the template, and where on a board the plug is cut, chosen over its photograph. */
export function PatchView({ design }: { readonly design: Design }) {
  const patches = useAnswer('patches');
  const [chosen, setChosen] = useState(0);
  const typed = design.wood?.patches ?? [];
  const at = Math.min(chosen, typed.length - 1);
  const add = (): void => {
    const names = new Set(typed.map(({ name }) => name));
    let count = typed.length + 1;
    while (names.has(said.newPatch(count))) count += 1;
    const hasBushing = design.tooling.guide.kind === 'bushing';
    const patch = usualPatch(said.newPatch(count), design.units.length, hasBushing);
    change(said.added, [{ path: ['wood', 'patches'], to: [...typed, patch] }]);
    setChosen(typed.length);
  };
  const own = typed[at];
  const shown = patches?.[at];
  return (
    <div class="patch-view">
      <div class="boards-head">
        <p class="hint">{said.help}</p>
        {typed.length < 2 ? null : (
          <fieldset class="choices board-choice">
            <legend class="hidden-label">{said.title}</legend>
            {typed.map(({ name }, k) => (
              <label key={name}>
                <input type="radio" name="patch" checked={k === at} onChange={() => setChosen(k)} /> {name}
              </label>
            ))}
          </fieldset>
        )}
        <Button {...(typed.length === 0 ? { look: 'main' as const } : {})} onClick={add}>
          {said.add}
        </Button>
      </div>
      {own === undefined ? null : shown === undefined || shown.name !== own.name ? (
        <p class="waiting">{words.loading}</p>
      ) : 'why' in shown ? (
        <div class="patch-parts">
          {shown.why.map((why) => (
            <p key={why} class="problem">
              {why}
            </p>
          ))}
          <PatchFields key={own.name} design={design} patch={own} at={at} />
        </div>
      ) : (
        <>
          <PatchBench key={`${own.name} ${shown.on?.board}`} patch={shown} at={at} />
          <div class="patch-parts">
            <PatchFields key={own.name} design={design} patch={own} at={at} />
            <PatchTemplate design={design} patch={shown} at={at} />
          </div>
        </>
      )}
    </div>
  );
}

interface PatchTemplateProps {
  readonly design: Design;
  readonly patch: ShownPatch;
  readonly at: number;
}

/** The one template: its opening, the plug and the recess that come of it, and what is to be said of them. */
function PatchTemplate({ design, patch, at }: PatchTemplateProps) {
  const { x, y, width, height } = patch.scene.box;
  const { size, collar, gap } = patch.sizes;
  return (
    <section class="patch-template" aria-label={said.template}>
      <div class="scene drawn-page">
        <svg
          role="img"
          aria-label={said.drawing(patch.name)}
          viewBox={`${x - 2} ${y - 2} ${width + 4} ${height + 4}`}
        >
          <SceneLines scene={patch.scene} />
        </svg>
      </div>
      <div>
        <p>{said.sizes(size, collar, gap)}</p>
        {patch.findings.map(({ severity, words: text }) => (
          <p key={text} class={severity === 'note' ? 'hint' : 'problem'}>
            {text}
          </p>
        ))}
        <p class="hint">{said.care}</p>
        <Button look="main" onClick={() => void printToFile(design, { kind: 'patch', at, name: patch.name })}>
          {said.print}
        </Button>
        <PrintProgress />
      </div>
    </section>
  );
}
