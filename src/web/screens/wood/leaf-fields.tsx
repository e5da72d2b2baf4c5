import type { Design } from '../../../design/index.ts';
import { useAnswer } from '../../engine/use-answer.ts';
import { change } from '../../state/current.ts';
import { Button } from '../../ui/button.tsx';
import { Choice, choicesOf } from '../../ui/choice.tsx';
import { words } from '../../words/en.ts';
import { WoodField } from './wood-field.tsx';

type Wood = NonNullable<Design['wood']>;

/** Leaves for the show faces of a part: how the board is resawn and how the leaves are opened. */
export function LeafFields({ design }: { readonly design: Design }) {
  const parts = useAnswer('parts') ?? [];
  const said = words.wood;
  const { resaw = [], bookmatch = [] } = design.wood ?? {};
  const carry = (part: string, label: string): void =>
    change(said.carried, [
      { path: ['wood', 'resaw'], to: [...resaw, usualPlan(part, design.units.length)] },
      {
        path: ['wood', 'bookmatch'],
        to: [
          ...bookmatch,
          { name: label, arrangement: 'book', resaw: part, parts: [{ part, faces: ['face'] }] },
        ],
      },
    ]);
  const uncarry = (at: number): void => {
    const { resaw: plan } = bookmatch[at]!;
    change(said.uncarry, [
      { path: ['wood', 'bookmatch'], to: bookmatch.filter((_, i) => i !== at) },
      { path: ['wood', 'resaw'], to: resaw.filter(({ name }) => name !== plan) },
    ]);
  };
  const carried = new Set(bookmatch.flatMap((match) => match.parts.map(({ part }) => part)));
  return (
    <section aria-label={said.leaves}>
      <h2>{said.leaves}</h2>
      {bookmatch.map((match, at) => {
        const index = resaw.findIndex(({ name }) => name === match.resaw);
        const plan = resaw[index];
        return (
          <details key={match.name} open>
            <summary>{match.name}</summary>
            <Choice
              label={said.arrangement}
              options={choicesOf(said.arrangements)}
              chosen={match.arrangement}
              onChoose={(arrangement) =>
                change(said.arrangement, [
                  { path: ['wood', 'bookmatch', at, 'arrangement'], to: arrangement },
                ])
              }
            />
            {plan === undefined ? null : (
              <>
                <WoodField label={said.rough} path={['resaw', index, 'rough']} value={plan.rough} />
                <WoodField label={said.kerf} path={['resaw', index, 'kerf']} value={plan.kerf} />
                <WoodField
                  label={said.count}
                  path={['resaw', index, 'leaves']}
                  value={plan.leaves}
                  write={(text) => Number(text) || text}
                />
                <WoodField label={said.backing} path={['resaw', index, 'backing']} value={plan.backing} />
              </>
            )}
            <Button look="quiet" onClick={() => uncarry(at)}>
              {said.uncarry}
            </Button>
          </details>
        );
      })}
      <p class="hint">{bookmatch.length === 0 ? said.leavesHelp : said.usual}</p>
      <div class="row">
        {parts
          .filter(({ name }) => !carried.has(name))
          .map(({ name, label }) => (
            <Button key={name} look="quiet" onClick={() => carry(name, label)}>
              {said.carry(label)}
            </Button>
          ))}
      </div>
    </section>
  );
}

/** A board resawn in half for one part, with usual losses (common practice) to be changed to the saw and planer in hand. */
function usualPlan(name: string, unit: Design['units']['length']): NonNullable<Wood['resaw']>[number] {
  return unit === 'mm'
    ? {
        name,
        rough: '6/4',
        flattening: '3 mm',
        kerf: '1.5 mm',
        leaves: 2,
        planing: { sawn: '1 mm', outer: '0.5 mm' },
        drying: '1 mm',
        backing: '26 mm',
        lastPlaning: { show: '1 mm', back: '1 mm' },
        drift: '0.5 mm',
      }
    : {
        name,
        rough: '6/4',
        flattening: '1/8 in',
        kerf: '1/16 in',
        leaves: 2,
        planing: { sawn: '1/32 in', outer: '1/64 in' },
        drying: '1/32 in',
        backing: '1 in',
        lastPlaning: { show: '1/32 in', back: '1/32 in' },
        drift: '1/64 in',
      };
}
