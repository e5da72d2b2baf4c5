import { type BuiltBase, caulAsPart, type TopFixings } from '../../base/index.ts';
import type { BookBlock, BookChapter } from '../../print/index.ts';
import type { ComputedPart } from '../computed.ts';
import { type BookStyle, clampOpening, degrees, fine, finer, long, sizes } from './book-style.ts';
import { bookNames } from './names.ts';

/** The steps of gluing with clamps and wedges, and the wedges themselves at full size. */
export function glueChapter(built: BuiltBase, style: BookStyle): BookChapter {
  const { glue, joints, cauls } = built;
  const labels = new Map(joints.joints.map(({ name, label }) => [name, label]));
  const { piece: nameOf } = bookNames(built);
  const steps = glue.map(({ names, groups }) => {
    const clamps = sayClamps(groups[0]?.clamps ?? [], style);
    const times = groups.length === 1 ? '' : ` Make ${groups.length} alike.`;
    const who = groups.map(({ parts }) => parts.map(nameOf).join(' + ')).join('; ');
    return `${names.map((name) => labels.get(name) ?? name).join(', ')}: ${who}.${times} ${clamps === '' ? 'Press by hand or with light clamps.' : `Take ${clamps}.`} Before the glue sets: diagonals, wind, and every foot on a flat floor.`;
  });
  return {
    title: 'Gluing up',
    newPage: false,
    blocks: [
      {
        kind: 'text',
        text: 'Sand what cannot be reached later, then put everything together dry with all clamps and cauls, and lay the dry frames on the full-size setting-out. Glue small groups first and join those. Pressure goes square to the joint; let squeeze-out set and scrape it.',
      },
      { kind: 'list', numbered: true, items: steps },
      ...caulBlocks(cauls, nameOf, style),
    ],
  };
}

/** Alike ones are said once, with how many ways they are wanted in. */
function sayClamps(clamps: BuiltBase['glue'][number]['groups'][number]['clamps'], style: BookStyle): string {
  const said = clamps.map(({ opening, withCauls, cauls }) =>
    cauls.length === 0
      ? `that open at least ${clampOpening(opening, style)} and their pads (wood to wood ${long(opening, style)})`
      : `that open at least ${clampOpening(withCauls, style)}, cauls between (wood to wood ${long(opening, style)})`,
  );
  return [...new Set(said)]
    .map((each) => {
      const ways = said.filter((other) => other === each).length;
      return `clamps ${each}${ways === 1 ? '' : `, in ${ways} places`}`;
    })
    .join('; ');
}

function caulBlocks(
  cauls: BuiltBase['cauls'],
  nameOf: (id: string) => string,
  style: BookStyle,
): readonly BookBlock[] {
  if (cauls.length === 0) return [];
  return [
    { kind: 'heading', text: 'Angled cauls' },
    {
      kind: 'text',
      text: 'Each has its pattern at full size on sheets of its own, printed with this book as those of the parts are: trace or glue it on offcuts, the grain along the slope. The slope lies on the work, under a strip of leather or cork.',
    },
    {
      kind: 'table',
      columns: [
        { head: 'Caul' },
        { head: 'Make', align: 'right' },
        { head: 'Wedge', align: 'right' },
        { head: 'Long', align: 'right' },
        { head: 'Wide', align: 'right' },
        { head: 'Pressed on', share: 3 },
      ],
      rows: cauls.map((caul) => [
        caulAsPart(caul).label,
        `${caul.count}`,
        degrees(caul.angle),
        fine(caul.along, style),
        fine(caul.across, style),
        [...new Set(caul.places.map(({ part }) => nameOf(part)))].join(', '),
      ]),
    },
  ];
}

/** Where the top is fixed, with slots for its movement, and where levellers go. */
export function topChapter(built: BuiltBase, fixings: TopFixings, style: BookStyle): BookChapter {
  const { base } = built;
  const { piece: nameOf } = bookNames(built);
  const { points, movement, dry, damp, made } = fixings;
  const percent = (share: number): string => `${Math.round(share * 100)} %`;
  const levellers =
    base.levellers > 0
      ? `Levellers add ${long(base.levellers, style)} under the feet, and the height counts them. Bore for them square to the floor, not along a leaning leg; in end grain take a longer thread or epoxy (common practice).`
      : 'No levellers are reckoned with: type their height in the form before cutting if there are to be any. They are bored square to the floor, not along a leaning leg.';
  return {
    title: 'The top and the feet',
    newPage: false,
    blocks: [
      {
        kind: 'text',
        text: `A solid top ${long(base.top.width, style)} wide, its grain along the table, moves by ${fine(movement.range, style)} across a year: ${fine(movement.shrinks, style)} narrower and ${fine(movement.swells, style)} wider than made at ${tenth(made)} % moisture, between ${tenth(dry.celsius)} °C with ${percent(dry.humidity)} and ${tenth(damp.celsius)} °C with ${percent(damp.humidity)} of humidity (${fixings.sawn}-sawn; ${movement.sources.map((source) => source.replace(/[:;].*$/s, '')).join('; ')}). It is held still along its middle; elsewhere its screws stand in slots across the grain. Mark the holes from the finished base in place, not from these figures, and leave at least ${fine(6, style)} of the top above them.`,
      },
      {
        kind: 'table',
        columns: [
          { head: 'Through', share: 2 },
          { head: 'From the middle, along', align: 'right' },
          { head: 'From the middle, across', align: 'right' },
          { head: 'Slot', align: 'right' },
          { head: 'Room inwards', align: 'right' },
          { head: 'Room outwards', align: 'right' },
        ],
        rows: points.map(({ part, at, slot }) => [
          nameOf(part),
          long(at.x, style),
          long(at.y, style),
          sizes([slot.width, slot.length], finer(style)),
          fine(slot.inwards, style),
          fine(slot.outwards, style),
        ]),
      },
      { kind: 'heading', text: 'Levellers' },
      { kind: 'text', text: levellers },
    ],
  };
}

const tenth = (value: number): number => Math.round(value * 10) / 10;

/** What the cutter leaves for the hand: residues to pare and pockets to square. */
export function handChapter(parts: readonly ComputedPart[], built: BuiltBase, style: BookStyle): BookChapter {
  const items = [
    ...parts.flatMap(({ part, routing }) =>
      routing.differences
        .filter(({ kind, reach }) => kind === 'left' && reach > 0.2)
        .map(
          ({ reach, edges }) =>
            `${part.label}: pare ${fine(reach, style)} at ${edges.map((edge) => edge.replaceAll('_', ' ')).join(', ')}, which the cutter cannot enter.`,
        ),
    ),
    ...built.made.flatMap(({ label, work }) =>
      work.flatMap((each) =>
        each.kind === 'pocket' && each.corners.length > 0
          ? [`${label}: square ${each.corners.length} corners of the halving with a chisel.`]
          : [],
      ),
    ),
  ];
  return {
    title: 'By hand',
    newPage: false,
    blocks:
      items.length === 0
        ? [
            {
              kind: 'text',
              text: 'The cutter reaches every routed edge; nothing is left to pare. Ease the arrises.',
            },
          ]
        : [{ kind: 'list', numbered: false, items: [...new Set(items)] }],
  };
}
