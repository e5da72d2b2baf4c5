import type { BuiltBase, MadePart } from '../../base/index.ts';
import {
  basePicture,
  type Picture,
  type Plate,
  partPictures,
  pictorialOf,
  platesOf,
} from '../../drawing/index.ts';
import { type BookBlock, bookRoom } from '../../print/index.ts';
import type { Computed } from '../computed.ts';
import { resolvePaper } from '../resolve-paper.ts';

/** The book's own title above the first plate, and white under every one, mm. */
const OPENING = 32;
const UNDER = 3;
/** What another view of the plate says already. */
const SAID = {
  front: ['overall height', 'underside of the top'],
  plan: ['length of the top', 'width of the top'],
} as const;

/** The base from the front, from the left, from above and as one sees it; and each different part. */
export function viewChapters(
  { design, lengths }: Computed,
  { base, made }: BuiltBase,
): { readonly base: readonly BookBlock[]; readonly parts: readonly BookBlock[] } {
  const { name, revision } = design;
  const paper = resolvePaper(design.paper, design.units.length);
  if (!paper.ok) throw new RangeError('paper was resolved before');
  const room = bookRoom(paper.value);
  const front = without(basePicture(base, 'front'), SAID.front);
  const left = basePicture(base, 'left');
  const plan = without(basePicture(base, 'plan'), SAID.plan);
  const plates: readonly {
    readonly title: string;
    readonly type: string;
    /** Ways to set its pictures in rows on one plate or several. */
    readonly ways: readonly (readonly (readonly (readonly Picture[])[])[])[];
  }[] = [
    {
      title: name,
      type: 'General arrangement',
      ways: [
        [[[front, left], [plan]]],
        [[[front], [left], [plan]]],
        [[[front], [plan]], [[left]]],
        [[[front]], [[plan]], [[left]]],
      ],
    },
    { title: name, type: 'Pictorial view', ways: [[[[pictorialOf(base.parts)]]]] },
    ...made.map((part) => ({
      title: `${name}: ${part.label}`,
      type: 'Part',
      ways: [[[partPictures(part, placedOf(part, base))]]],
    })),
  ];
  const blocks = plates.map(({ title, type, ways }, at): readonly BookBlock[] => {
    const drawn = platesOf(ways, {
      lengths,
      width: room.width,
      height: room.height - UNDER - (at === 0 ? OPENING : 0),
      title: {
        title,
        documentType: type,
        number: `${at + 1}`,
        revision: revision.index,
        date: revision.date,
      },
    });
    return drawn.flatMap(blocksOfPlate);
  });
  return { base: blocks.slice(0, 2).flat(), parts: blocks.slice(2).flat() };
}

function blocksOfPlate({ scene, left }: Plate): readonly BookBlock[] {
  const drawing: BookBlock = { kind: 'drawing', scene };
  if (left.length === 0) return [drawing];
  return [drawing, { kind: 'text', text: `Not in the drawing for want of room: ${left.join('; ')}.` }];
}

function without(picture: Picture, names: readonly string[]): Picture {
  return { ...picture, dimensions: picture.dimensions.filter(({ name }) => !names.includes(name)) };
}

/** The placed part that lies as the pattern of a made part does, where there is one. */
function placedOf({ members }: MadePart, base: BuiltBase['base']) {
  const asDrawn = members.find(
    ({ hand, turned, part }) =>
      hand === 'left' && !turned && base.parts.some((each) => each.id === part && each.hand === 'left'),
  );
  return base.parts.find(({ id }) => id === (asDrawn ?? members[0]!).part)!;
}
