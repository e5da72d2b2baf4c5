import {
  type BuiltBase,
  type PartCut,
  sawCautions,
  sayCut,
  sayCutError,
  sayNextCut,
  sayWays,
} from '../../base/index.ts';
import type { BookBlock, BookChapter } from '../../print/index.ts';
import { type BookStyle, degrees, words } from './book-style.ts';
import { settingDrawing } from './setting-drawing.ts';

/** All settings of the saw in the order of fewest changes, then each cut in every way that it can be set. */
export function sawChapter(built: BuiltBase, style: BookStyle): BookChapter {
  const cutStyle = { length: style.lengths, angle: { unit: 'deg', decimals: 2 } } as const;
  const { order, cuts, made } = built;
  const labels = new Map(made.map(({ name, label }) => [name, label]));
  const nameOf = (id: string): string => {
    const [part, plane, hand] = id.split(' ');
    return `${labels.get(part!) ?? part}: ${words(plane!)}${hand === 'right' ? ' (right hand)' : ''}`;
  };
  const side = (rad: number): string =>
    Math.abs(rad) < 1e-6 ? 'square' : `${degrees(Math.abs(rad))} to the ${rad < 0 ? 'left' : 'right'}`;
  return {
    title: 'Saw settings',
    newPage: true,
    blocks: [
      {
        kind: 'text',
        text: `In the order that needs fewest changes of the saw: ${order.swingChanges} of swing, ${order.tiltChanges} of tilt, beginning square. Zero is the square cut; left and right are the sawyer’s. Cut a test piece at each setting first.`,
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
      ...cuts.flatMap(({ part, cuts: own }) =>
        own.flatMap((cut) => cutBlocks(labels.get(part) ?? part, cut, cutStyle)),
      ),
    ],
  };
}

type CutStyle = Parameters<typeof sayCut>[1];

function cutBlocks(label: string, part: PartCut, style: CutStyle): readonly BookBlock[] {
  const { cut, edge, next, mirrored, ways, error, length, name } = part;
  const held =
    cut.kind !== 'end'
      ? []
      : [
          edge === undefined
            ? 'The part is curved: cut this end while it is held in its blank, the face edge of the blank against the fence.'
            : `Against the fence: its ${words(edge)} edge.`,
        ];
  const picture =
    cut.kind === 'end' && ways[0]?.kind !== undefined && !cut.square ? [settingDrawing(part, style)] : [];
  return [
    { kind: 'heading', text: `${label}, cut by ${words(name)}` },
    ...picture,
    {
      kind: 'list',
      numbered: false,
      items: [
        ...held,
        ...sayCut(cut, style),
        ...(cut.kind === 'end' && ways[0]?.kind !== 'direct' ? sayWays(ways, style) : []),
        ...(next === undefined ? [] : sayNextCut(next, style).map((text) => `After the first end: ${text}`)),
        ...(mirrored === undefined
          ? []
          : sayNextCut(mirrored, style).map((text) => `For the right hand: ${text}`)),
        ...(error === undefined ? [] : sayCutError(error, length, style)),
      ],
    },
  ];
}
