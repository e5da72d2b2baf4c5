import type { BuiltBase, MadePart } from '../../base/index.ts';
import { basePicture, type Picture, partPictures, pictorialOf, plateOf } from '../../drawing/index.ts';
import type { BookBlock } from '../../print/index.ts';
import type { Computed } from '../computed.ts';

/** Room for one plate on a page of the book, mm. */
const PLATE = { width: 182, height: 232 } as const;
const PART_PLATE = { width: 182, height: 205 } as const;

/** The base from the front, from the left, from above and as one sees it; and each different part. */
export function viewChapters(
  { design, lengths }: Computed,
  { base, made }: BuiltBase,
): { readonly base: readonly BookBlock[]; readonly parts: readonly BookBlock[] } {
  const { name, revision } = design;
  const [front, left, plan] = (['front', 'left', 'plan'] as const).map((side) => basePicture(base, side)) as [
    Picture,
    Picture,
    Picture,
  ];
  const plates: readonly {
    readonly title: string;
    readonly type: string;
    /** Ways to set its pictures in rows. */
    readonly ways: readonly (readonly (readonly Picture[])[])[];
  }[] = [
    {
      title: name,
      type: 'General arrangement',
      ways: [
        [[front, left], [plan]],
        [[front], [left, plan]],
        [[front], [left], [plan]],
      ],
    },
    { title: name, type: 'Pictorial view', ways: [[[pictorialOf(base.parts)]]] },
    ...made.map((part) => ({
      title: `${name}: ${part.label}`,
      type: 'Part',
      ways: [[partPictures(part, placedOf(part, base))]],
    })),
  ];
  const blocks = plates.map(({ title, type, ways }, at): readonly BookBlock[] => {
    const plate = plateOf(ways, {
      lengths,
      ...(at === 0 ? PLATE : PART_PLATE),
      title: {
        title,
        documentType: type,
        number: `${at + 1}`,
        revision: revision.index,
        date: revision.date,
        sheet: `${at + 1}/${plates.length}`,
      },
    });
    return [
      { kind: 'drawing', scene: plate.scene },
      ...(plate.left.length === 0
        ? []
        : [
            { kind: 'text', text: `Not in the drawing for want of room: ${plate.left.join('; ')}.` } as const,
          ]),
    ];
  });
  return { base: blocks.slice(0, 2).flat(), parts: blocks.slice(2).flat() };
}

/** The placed part that lies as the pattern of a made part does, where there is one. */
function placedOf({ members }: MadePart, base: BuiltBase['base']) {
  const asDrawn = members.find(
    ({ hand, turned, part }) =>
      hand === 'left' && !turned && base.parts.some((each) => each.id === part && each.hand === 'left'),
  );
  return base.parts.find(({ id }) => id === (asDrawn ?? members[0]!).part)!;
}
