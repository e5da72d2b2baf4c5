import type { BuiltBase } from '../../base/index.ts';
import type { BookChapter } from '../../print/index.ts';
import type { MovingPart } from '../../wood/index.ts';
import type { ComputedWood } from '../wood-of-design.ts';
import { type BookStyle, fine } from './book-style.ts';

/** Movement less than this (mm) over a year is seldom felt (common practice). */
const FELT = 1;

/** What every part does across its grain over the year. */
export function movementChapter(
  { parts, top, topWood }: ComputedWood,
  { base }: BuiltBase,
  style: BookStyle,
): BookChapter {
  const percent = (share: number): string => `${Math.round(share * 100)} %`;
  const [first] = parts;
  if (first === undefined) return { title: 'The wood over the year', newPage: false, blocks: [] };
  const { driest, dampest } = first.across;
  return {
    title: 'The wood over the year',
    newPage: false,
    blocks: [
      {
        kind: 'text',
        text: `Worked at ${round(top.made)} % moisture content, the wood comes to ${round(driest)} % in the driest air (${round(top.dry.celsius)} °C, ${percent(top.dry.humidity)} humidity) and to ${round(dampest)} % in the dampest (${round(top.damp.celsius)} °C, ${percent(top.damp.humidity)}). Across the grain it moves with that; along it hardly at all. Real boards lie between flat- and quarter-sawn and a finish slows them: they move less than this. What moves ${fine(FELT, style)} or more (*) must be free to: do not glue it across another grain, nor hold it at both edges.`,
      },
      {
        kind: 'table',
        columns: [
          { head: 'Part', share: 2 },
          { head: 'Rings' },
          { head: 'Across the grain', align: 'right' },
          { head: 'Narrower by', align: 'right' },
          { head: 'Wider by', align: 'right' },
          { head: 'In all', align: 'right' },
          { head: 'Thickness, in all', align: 'right' },
        ],
        rows: [
          movementRow(
            { label: 'Top', wood: topWood, sawn: top.sawn, width: base.top.width, across: top.movement },
            style,
          ),
          ...parts.map((part) => movementRow(part, style)),
        ],
      },
      {
        kind: 'text',
        text: `By ${[...new Set(parts.flatMap(({ across }) => across.sources))].map((source) => source.replace(/[:;].*$/s, '')).join('; ')}.`,
      },
    ],
  };
}

function movementRow(
  {
    label,
    wood,
    sawn,
    width,
    across,
    through,
  }: Pick<MovingPart, 'label' | 'wood' | 'sawn' | 'width' | 'across'> & Partial<Pick<MovingPart, 'through'>>,
  style: BookStyle,
): readonly string[] {
  return [
    `${label}\n${wood.name}`,
    `${sawn}-sawn`,
    fine(width, style),
    fine(across.shrinks, style),
    fine(across.swells, style),
    `${fine(across.range, style)}${across.range >= FELT ? ' *' : ''}`,
    through === undefined ? '–' : fine(through.range, style),
  ];
}

const round = (value: number): string => `${Math.round(value * 10) / 10}`;
