import type { Design } from '../../../design/index.ts';
import { engineDo } from '../../engine/engine-do.ts';
import { DesignLength } from '../../fields/design-length.tsx';
import { change, design } from '../../state/current.ts';
import { Choice, choicesOf } from '../../ui/choice.tsx';
import { words } from '../../words/en.ts';

type Guide = Design['tooling']['guide'];
const said = words.routing;

/** Bit, guide and template in hand. */
export function ToolFields() {
  const inHand = design.value;
  if (inHand === undefined) return null;
  const { tooling } = inHand;
  const { cutter } = tooling;
  return (
    <section aria-label={said.tools}>
      <h2>{said.tools}</h2>
      <Choice
        label={said.machine}
        options={choicesOf(said.machines)}
        chosen={tooling.machine}
        onChoose={(machine) => change(said.machine, [{ path: ['tooling', 'machine'], to: machine }])}
      />
      <DesignLength label={said.cutter} path={['tooling', 'cutter', 'diameter']} value={cutter.diameter} />
      <DesignLength
        label={said.cuttingLength}
        path={['tooling', 'cutter', 'cuttingLength']}
        value={cutter.cuttingLength}
      />
      <Choice
        label={said.guide}
        options={choicesOf(said.guides)}
        chosen={tooling.guide.kind}
        onChoose={(kind) => void takeGuide(inHand, kind)}
      />
      <GuideFields guide={tooling.guide} />
      <DesignLength
        label={said.template}
        path={['tooling', 'templateThickness']}
        value={tooling.templateThickness}
      />
      <DesignLength label={said.runOn} path={['tooling', 'runOn']} value={tooling.runOn} />
    </section>
  );
}

function GuideFields({ guide }: { readonly guide: Guide }) {
  const path = ['tooling', 'guide'];
  if (guide.kind === 'bushing') {
    return (
      <>
        <DesignLength
          label={said.bushing}
          path={[...path, 'outsideDiameter']}
          value={guide.outsideDiameter}
        />
        <DesignLength label={said.barrel} path={[...path, 'barrelLength']} value={guide.barrelLength} />
      </>
    );
  }
  return (
    <>
      <DesignLength label={said.bearing} path={[...path, 'diameter']} value={guide.diameter} />
      <Choice
        label={said.bearingAt}
        options={choicesOf(said.bearings)}
        chosen={guide.at}
        onChoose={(at) => change(said.bearingAt, [{ path: [...path, 'at'], to: at }])}
      />
    </>
  );
}

async function takeGuide(inHand: Design, kind: Guide['kind']): Promise<void> {
  const guide = await engineDo('usualGuide', { design: inHand, kind });
  change(said.guide, [{ path: ['tooling', 'guide'], to: guide }]);
}
