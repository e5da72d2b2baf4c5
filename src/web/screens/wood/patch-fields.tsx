import type { Design } from '../../../design/index.ts';
import { change } from '../../state/current.ts';
import { Button } from '../../ui/button.tsx';
import { Choice, choicesOf } from '../../ui/choice.tsx';
import { words } from '../../words/en.ts';
import { amountOf } from './why-not.ts';
import { WoodField } from './wood-field.tsx';

const said = words.wood.mending;

type Patch = NonNullable<NonNullable<Design['wood']>['patches']>[number];

interface PatchFieldsProps {
  readonly design: Design;
  readonly patch: Patch;
  readonly at: number;
}

/** What a patch is to mend, what it is cut with, and from which board. */
export function PatchFields({ design, patch, at }: PatchFieldsProps) {
  const path = ['patches', at] as const;
  const boards = (design.wood?.boards ?? []).filter(({ kind }) => kind !== 'sheet');
  const patches = design.wood?.patches ?? [];
  return (
    <section class="patch-fields" aria-label={patch.name}>
      <WoodField label={said.along} of="length" path={[...path, 'along']} value={patch.along} />
      <WoodField label={said.across} of="length" path={[...path, 'across']} value={patch.across} />
      <Choice
        label={said.shape}
        options={choicesOf(said.shapes)}
        chosen={patch.shape}
        onChoose={(shape) => change(said.shape, [{ path: ['wood', ...path, 'shape'], to: shape }])}
      />
      <WoodField
        label={said.slenderness}
        of="ratio"
        optional
        path={[...path, 'slenderness']}
        value={patch.slenderness}
        write={(text) => amountOf(text)}
      />
      <WoodField label={said.margin} of="length" optional path={[...path, 'margin']} value={patch.margin} />
      <WoodField
        label={said.clearance}
        of="length"
        optional
        path={[...path, 'clearance']}
        value={patch.clearance}
      />
      <WoodField label={said.cutter} of="length" optional path={[...path, 'cutter']} value={patch.cutter} />
      <WoodField
        label={said.bushing}
        of="length"
        optional
        path={[...path, 'bushing']}
        value={patch.bushing}
      />
      <WoodField label={said.collar} of="length" optional path={[...path, 'collar']} value={patch.collar} />
      {boards.length < 2 ? null : (
        <Choice
          label={said.board}
          options={boards.map(({ name }) => [name, name] as const)}
          chosen={patch.board ?? boards[0]!.name}
          onChoose={(board) =>
            change(said.board, [
              // Another board: the plug begins in its middle.
              { path: ['wood', ...path, 'board'], to: board },
              { path: ['wood', ...path, 'x'] },
              { path: ['wood', ...path, 'y'] },
              { path: ['wood', ...path, 'turned'] },
            ])
          }
        />
      )}
      <Button
        look="quiet"
        onClick={() =>
          change(said.removed, [{ path: ['wood', 'patches'], to: patches.filter((_, k) => k !== at) }])
        }
      >
        {said.remove(patch.name)}
      </Button>
    </section>
  );
}
