import {
  type BuiltBase,
  type CutTable,
  linesToMark,
  type PartCut,
  sawCautions,
  sayCut,
  sayCutError,
  sayHoldDown,
  sayNextCut,
  sayWays,
  tableOfWays,
} from '../../base/index.ts';
import type { BookBlock, BookChapter } from '../../print/index.ts';
import { type BookStyle, capital, degrees, words } from './book-style.ts';
import { type BookNames, bookNames } from './names.ts';
import { settingDrawing } from './setting-drawing.ts';

type CutStyle = NonNullable<Parameters<typeof sayCut>[1]>;

/** All settings of the saw in the order of fewest changes, then each cut in every way that it can be set. */
export function sawChapter(built: BuiltBase, style: BookStyle): BookChapter {
  const cutStyle = { length: style.lengths, angle: { unit: 'deg', decimals: 2 } } as const;
  const { order, cuts } = built;
  const names = bookNames(built);
  const nameOf = (id: string): string => {
    const [part, plane, hand] = id.split(' ');
    const cut = cuts.find((each) => each.part === part)!.cuts.find(({ name }) => name === plane)!;
    return `${names.part(part!)}: ${names.cut(cut)}${hand === 'right' ? ' (right hand)' : ''}`;
  };
  const side = (rad: number): string =>
    Math.abs(rad) < 1e-6 ? 'square' : `${degrees(Math.abs(rad))} to the ${rad < 0 ? 'left' : 'right'}`;
  return {
    title: 'Saw settings',
    newPage: false,
    blocks: [
      {
        kind: 'text',
        text: `In the order that needs fewest changes of the saw: ${order.swingChanges} of swing, ${order.tiltChanges} of tilt, beginning square. Zero is the square cut; left and right are the sawyer’s. Ends are called as they lie on the drawings of the parts. Cut a test piece at each setting first.`,
      },
      {
        kind: 'table',
        columns: [
          { head: '' },
          { head: 'Swing', share: 1.2 },
          { head: 'Tilt', share: 1.2 },
          { head: 'Cuts', share: 3 },
        ],
        rows: order.groups.map(({ setting, ids }, at) => [
          `${at + 1}`,
          side(setting.swing),
          Math.abs(setting.tilt) < 1e-6 ? 'upright' : side(setting.tilt),
          ids.map(nameOf).join('\n'),
        ]),
      },
      { kind: 'heading', text: 'At the saw' },
      {
        kind: 'list',
        numbered: false,
        items: sawCautions(
          cuts.flatMap(({ cuts: own }) => own.flatMap(({ ways }) => ways.slice(0, 1))),
          style.lengths,
        ),
      },
      ...cuts.flatMap(({ part, cuts: own }) => own.flatMap((cut) => cutBlocks(part, cut, names, cutStyle))),
    ],
  };
}

function cutBlocks(name: string, part: PartCut, names: BookNames, style: CutStyle): readonly BookBlock[] {
  const { cut, ways } = part;
  const heading = { kind: 'heading', text: `${names.part(name)}: ${names.cut(part)}` } as const;
  if (cut.kind !== 'end') return [heading, { kind: 'list', numbered: false, items: sayCut(cut, style) }];
  const [best] = ways;
  const [angles] = sayCut(cut, style);
  if (cut.square) {
    const lengths = sayCut(cut, style).at(-1)!;
    return [
      heading,
      {
        kind: 'list',
        numbered: false,
        items: [`${angles} ${heldBy(part)}`, lengths, ...saidOf(part, style)],
      },
    ];
  }
  return [
    heading,
    { kind: 'text', text: `${angles} ${heldBy(part)}` },
    ...(best === undefined ? [] : [settingDrawing(best, workOn(part, best.lay), style)]),
    ...(ways.length === 0 ? [] : [tableBlock(tableOfWays(ways, style), 3)]),
    tableBlock(linesToMark(cut, style), 1.4),
    { kind: 'list', numbered: false, items: saidOf(part, style) },
  ];
}

const heldBy = ({ edge }: PartCut): string =>
  edge === undefined
    ? 'The part is curved: cut this end while it is held in its blank, the face edge of the blank against the fence.'
    : `Against the fence: its ${words(edge)} edge.`;

function saidOf(part: PartCut, style: CutStyle): readonly string[] {
  const { cut, next, mirrored, ways, error, length } = part;
  const isOrdinary = ways[0]?.kind === 'direct';
  // The angles in the wood prove the sawn end; the rest of what is said of a cut stands in the tables.
  const proof = cut.kind === 'end' && !cut.square ? sayCut(cut, style).slice(-1) : [];
  return [
    ...(isOrdinary ? [] : sayWays(ways, style)),
    ...sayHoldDown(ways),
    ...proof,
    ...(next === undefined ? [] : [`After the first end: ${sayNextCut(next, style).join(' ')}`]),
    ...(mirrored === undefined ? [] : [`For the right hand: ${sayNextCut(mirrored, style).join(' ')}`]),
    ...(error === undefined ? [] : [sayCutError(error, length, style).join(' ')]),
  ].map(capital);
}

/** The work on the saw, lying or standing. */
function workOn({ blank }: PartCut, { down }: { readonly down: string }) {
  const width = blank.right - blank.left;
  const isStanding = down === 'left' || down === 'right';
  return isStanding ? { high: width, across: blank.thickness } : { high: blank.thickness, across: width };
}

function tableBlock({ heads, rows }: CutTable, share: number): BookBlock {
  return { kind: 'table', columns: heads.map((head, at) => ({ head, share: at === 0 ? 1 : share })), rows };
}
