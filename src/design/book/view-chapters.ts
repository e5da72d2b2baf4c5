import type { BuiltBase, MadePart } from '../../base/index.ts';
import {
  basePicture,
  type Picture,
  type Plate,
  type PlateWay,
  pictorialOf,
  platesOf,
  platesOfPart,
  transformScene,
  viewScene,
} from '../../drawing/index.ts';
import { type BookBlock, bookPaper } from '../../print/index.ts';
import type { Computed } from '../computed.ts';
import { resolvePaper } from '../resolve-paper.ts';
import { type BookStyle, sizes } from './book-style.ts';

/** What another view of the plate says already. */
const SAID = {
  front: ['overall height', 'underside of the top'],
  plan: ['length of the top', 'width of the top'],
} as const;

/** The base as one sees it; from the front, from the left and from above; and each different part. */
export function viewChapters(
  { design, lengths }: Computed,
  { base, made, woodOf, list }: BuiltBase,
): {
  readonly pictorial: BookBlock;
  readonly base: readonly BookBlock[];
  readonly parts: readonly BookBlock[];
} {
  const { name, revision } = design;
  const paper = resolvePaper(design.paper, design.units.length);
  if (!paper.ok) throw new RangeError('paper was resolved before');
  const options = (title: string, documentType: string, number: number, notes: readonly string[] = []) => ({
    lengths,
    page: bookPaper(paper.value),
    title: { title, documentType, number: `${number}`, revision: revision.index, date: revision.date },
    notes,
  });
  const front = basePicture(base, 'front');
  const left = basePicture(base, 'left');
  const plan = basePicture(base, 'plan');
  const [barFront, barePlan] = [without(front, SAID.front), without(plan, SAID.plan)];
  const ways: readonly PlateWay[] = [
    { plates: [[[barFront, left], [barePlan]]] },
    { plates: [[[barFront, left], [barePlan]]], lying: true },
    { plates: [[[front], [barePlan]], [[left]]] },
    { plates: [[[front]], [[plan]], [[left]]] },
    { plates: [[[front]], [[plan]], [[left]]], lying: true },
  ];
  const general = platesOf(ways, options(name, 'General arrangement', 1));
  const parts = made.flatMap((part, at) => {
    const line = list.find((each) => each.part === part.name);
    const notes = [
      quantityOf(part),
      [
        woodOf[part.name] ?? '',
        line === undefined
          ? ''
          : `finished ${sizes([line.finished.thickness, line.finished.width, line.finished.length], { lengths })}`,
      ]
        .filter((text) => text !== '')
        .join(', '),
    ];
    const drawn = platesOfPart(
      part,
      placedOf(part, base),
      options(`${name}: ${part.label}`, 'Part', at + 2, notes),
    );
    return platesAs(part.label, drawn);
  });
  return { pictorial: pictorialBlock(base, lengths), base: platesAs('General arrangement', general), parts };
}

const platesAs = (name: string, plates: readonly Plate[]): readonly BookBlock[] =>
  plates.map(({ scene }, at) => ({
    kind: 'plate',
    name: plates.length === 1 ? name : `${name}, ${at + 1} of ${plates.length}`,
    scene,
  }));

/** On the first page, as large as it is worth, mm. */
const PICTORIAL = { width: 130, height: 105 } as const;

function pictorialBlock(base: BuiltBase['base'], lengths: BookStyle['lengths']): BookBlock {
  const whole = viewScene(pictorialOf(base.parts), lengths);
  const { minX, maxX, minY, maxY } = whole.box;
  const scale = Math.min(PICTORIAL.width / (maxX - minX), PICTORIAL.height / (maxY - minY));
  return {
    kind: 'drawing',
    scene: transformScene(whole, { turn: 0, shift: { x: 0, y: 0 }, scale, mirrored: false }),
  };
}

function quantityOf({ sketch, members }: MadePart): string {
  const { left, right } = sketch.quantity;
  const marks = members.map(({ mark }) => mark).filter((mark) => mark !== '');
  const count = right === 0 ? `Make ${left}` : `Make ${left + right}: ${left} as drawn, ${right} mirrored`;
  return marks.length === 0 ? `${count}.` : `${count}; marked ${marks.join(', ')}.`;
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
