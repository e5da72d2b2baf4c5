import type { BuiltBase } from '../../base/index.ts';
import type { BookBlock, BookChapter } from '../../print/index.ts';
import { type BookStyle, capital, degrees, fine, hair, long, weight } from './book-style.ts';

/** How the base weighs and stands, each figure with its assumption and its source. */
export function standingChapter({ standing, base }: BuiltBase, style: BookStyle): BookChapter {
  if (standing === undefined) return { title: 'How it stands', newPage: false, blocks: [] };
  const { measured, topMass, tipping, beams, chairs, load } = standing;
  const rows: (readonly string[])[] = [
    [
      'Base',
      weight(measured.mass, style),
      'exact volume × density at 12 % moisture, tenons and dowels counted, glue left out',
    ],
    ['Top', weight(topMass, style, 1), 'solid, in the wood of the base'],
    ['Centre of mass of the base', `${long(measured.centre.z, style)} above the floor`, 'without the top'],
  ];
  if (tipping !== undefined) {
    const { worst } = tipping;
    rows.push([
      'Tips under',
      worst?.load === undefined
        ? 'no load on the top'
        : `${weight(worst.load.kilograms, style, 0)}${style.lengths.unit === 'mm' ? ` (${Math.round(worst.load.newtons)} N)` : ''}`,
      `standing ${long(tipping.fromEdge, style)} inside the edge, at the worst place. ${tipping.assumption} ${tipping.source}`,
    ]);
  }
  for (const { label, sag } of firstOfEach(beams)) {
    const worst = sag.spans
      .filter(({ to, from }) => to - from > 150)
      .toSorted((a, b) => b.laterShare - a.laterShare)[0];
    if (worst === undefined) continue;
    rows.push([
      `${label} sags by`,
      `${fine(Math.abs(worst.first), style)}, later ${fine(Math.abs(worst.later), style)}`,
      `under its share of ${weight(load, style, 0)} and the top, spread along it, over ${long(worst.to - worst.from, style)}. ${sag.assumption}`,
    ]);
  }
  if (chairs !== undefined) {
    rows.push([
      'Chairs along the front',
      `${chairs.places}`,
      `each ${long(chairs.chair, style)} wide (common practice); more would need ${long(chairs.neededForMore, style)} between the feet`,
    ]);
  }
  const limits: readonly BookBlock[] =
    standing.knees.length === 0
      ? []
      : [
          {
            kind: 'table',
            columns: [
              { head: 'Room', share: 2 },
              { head: 'Here', align: 'right' },
              { head: 'Usual', share: 3 },
            ],
            rows: standing.knees.map(({ name, value, least, most }) => [
              capital(
                name
                  .replace(/^knees\./, 'knees: ')
                  .replace(/([A-Z])/g, ' $1')
                  .toLowerCase(),
              ),
              long(value, style),
              [
                least === undefined ? '' : `at least ${long(least.value, style)} (${least.source})`,
                most === undefined ? '' : `at most ${long(most.value, style)} (${most.source})`,
              ]
                .filter((text) => text !== '')
                .join('; '),
            ]),
          },
        ];
  return {
    title: 'How it stands',
    newPage: false,
    blocks: [
      {
        kind: 'text',
        text: `Guidance, not a certificate: figures hold under the assumptions beside them. For a ${base.use} that the public uses, ask a licensed engineer or a test house.`,
      },
      {
        kind: 'table',
        columns: [
          { head: 'What', share: 1.5 },
          { head: 'Figure', share: 1.5 },
          { head: 'Under which assumptions', share: 4 },
        ],
        rows,
      },
      ...limits,
    ],
  };
}

function firstOfEach<T extends { readonly label: string }>(all: readonly T[]): readonly T[] {
  return all.filter(({ label }, at) => all.findIndex((each) => each.label === label) === at);
}

/** What usual errors of saw, length and template do at each joint and at the feet. */
export function errorsChapter({ errors }: BuiltBase, style: BookStyle): BookChapter {
  const { work, joints, rock } = errors;
  return {
    title: 'What must be exact',
    newPage: false,
    blocks: [
      {
        kind: 'text',
        text: `With a saw ${degrees(work.saw)} off, a length ${fine(work.length, style)} off and a template ${fine(work.template, style)} off (usual in a shop): worst when all err the same way, likely as the root of the sum of squares. A gap of ${hair(0.1, style)} hides, one of ${hair(0.2, style)} shows (common practice). What stands at the head of the table deserves the most care; what is routed from one template repeats, and its error cancels between copies.`,
      },
      {
        kind: 'table',
        columns: [
          { head: 'Joint', share: 2 },
          { head: 'Across it', align: 'right' },
          { head: 'To the foot', align: 'right' },
          { head: 'Gap, worst', align: 'right' },
          { head: 'Gap, likely', align: 'right' },
          { head: 'Foot, worst', align: 'right' },
          { head: 'Foot, likely', align: 'right' },
        ],
        rows: joints.map(({ label, section, arm, errors: { gap, foot } }) => [
          label,
          long(section, style),
          long(arm, style),
          ...[gap.worst, gap.likely, foot.worst, foot.likely].map((each) => hair(each, style)),
        ]),
      },
      ...(rock === undefined
        ? []
        : [
            {
              kind: 'text',
              text: `Four legs each ${fine(work.length, style)} off in length leave ${hair(rock.worst, style)} under a foot at worst, ${hair(rock.likely, style)} likely: leave the feet long and trim them on a flat floor once the base is glued.`,
            } as const,
          ]),
    ],
  };
}
