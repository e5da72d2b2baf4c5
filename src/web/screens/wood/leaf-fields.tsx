import { type Design, usualResawPlan } from '../../../design/index.ts';
import { useAnswer } from '../../engine/use-answer.ts';
import { change } from '../../state/current.ts';
import { Button } from '../../ui/button.tsx';
import { Choice, choicesOf } from '../../ui/choice.tsx';
import { words } from '../../words/en.ts';
import { WoodField } from './wood-field.tsx';

/** Leaves for the show faces of a part: how the board is resawn and how the leaves are opened. */
export function LeafFields({ design }: { readonly design: Design }) {
  const parts = useAnswer('parts') ?? [];
  const said = words.wood;
  const { resaw = [], bookmatch = [] } = design.wood ?? {};
  const carry = (part: string, label: string): void =>
    change(said.carried, [
      { path: ['wood', 'resaw'], to: [...resaw, usualResawPlan(planName(part), design.units.length)] },
      {
        path: ['wood', 'bookmatch'],
        to: [
          ...bookmatch,
          { name: label, arrangement: 'book', resaw: planName(part), parts: [{ part, faces: ['face'] }] },
        ],
      },
    ]);
  const planName = (part: string): string => {
    const taken = new Set(resaw.map(({ name }) => name));
    let name = part;
    for (let count = 2; taken.has(name); count++) name = `${part} ${count}`;
    return name;
  };
  const uncarry = (at: number): void => {
    const { resaw: plan } = bookmatch[at]!;
    change(said.uncarry, [
      { path: ['wood', 'bookmatch'], to: bookmatch.filter((_, i) => i !== at) },
      // Another match may be sawn by the same plan.
      ...(bookmatch.some((match, i) => i !== at && match.resaw === plan)
        ? []
        : [{ path: ['wood', 'resaw'], to: resaw.filter(({ name }) => name !== plan) }]),
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
                <WoodField
                  label={said.rough}
                  of="thickness"
                  optional
                  path={['resaw', index, 'rough']}
                  value={plan.rough}
                />
                <WoodField label={said.kerf} of="length" path={['resaw', index, 'kerf']} value={plan.kerf} />
                <WoodField
                  label={said.count}
                  of="count"
                  path={['resaw', index, 'leaves']}
                  value={plan.leaves}
                  write={Number}
                />
                <WoodField
                  label={said.backing}
                  of="length"
                  optional
                  path={['resaw', index, 'backing']}
                  value={plan.backing}
                />
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
