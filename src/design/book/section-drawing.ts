import type { JointSection } from '../../base/index.ts';
import { boundsOfMarks, type LineRole, type Mark } from '../../drawing/index.ts';
import {
  boundsOfRegions,
  intersectRegions,
  line,
  middle,
  polygonOutline,
  type Region,
  STAY,
  transformRegion,
  type Vec,
} from '../../geometry/index.ts';
import type { BookBlock } from '../../print/index.ts';
import { type BookStyle, fine } from './book-style.ts';

/** What is shown round the joint beyond its own bores, mm of wood. */
const ROUND = 45;
/** Room for it on paper, mm. */
const MOST = { width: 120, height: 75 } as const;
/** Walls thicker than this, mm, are no concern. */
const SHOWN_WALL = 40;
const TAG = { id: 'section', role: 'left' } as const;

/** The joint cut open along the drilled line: both parts, what is bored and what goes in, and the least wood left. */
export function sectionDrawing(
  section: JointSection,
  labelOf: (part: string) => string,
  style: BookStyle,
): BookBlock {
  const { parts, walls } = section;
  const inner = parts.flatMap(({ bores, tenons }) => [...bores, ...tenons]);
  const box = boundsOfRegions(inner.length > 0 ? inner : parts.flatMap(({ regions }) => regions));
  const window = [
    {
      outer: polygonOutline(
        [
          { x: box.minX - ROUND, y: box.minY - ROUND },
          { x: box.maxX + ROUND, y: box.minY - ROUND },
          { x: box.maxX + ROUND, y: box.maxY + ROUND },
          { x: box.minX - ROUND, y: box.maxY + ROUND },
        ],
        TAG,
      ),
      holes: [],
    },
  ];
  const seen = parts.map((part) => ({ ...part, regions: intersectRegions(part.regions, window) }));
  const all = boundsOfRegions(seen.flatMap(({ regions }) => regions));
  const scale = standardScale(
    Math.min(MOST.width / (all.maxX - all.minX), MOST.height / (all.maxY - all.minY)),
  );
  const place = (region: Region): Region => transformRegion(region, { ...STAY, scale: scale.factor });
  const put = (p: Vec): Vec => ({ x: p.x * scale.factor, y: p.y * scale.factor });
  const paths = (regions: readonly Region[], role: LineRole): readonly Mark[] =>
    regions
      .map(place)
      .flatMap(({ outer, holes }) => [outer, ...holes])
      .map(({ edges }): Mark => ({ kind: 'path', role, edges, closed: true }));
  const marks: Mark[] = [
    ...seen.flatMap(({ regions, bores, tenons }) => [
      ...paths(regions, 'part'),
      ...paths(bores, 'hidden'),
      ...paths(tenons, 'part'),
    ]),
    ...seen.map(({ part, regions }): Mark => label(labelOf(part), put(placeOfLabel(regions)), 2.5)),
    ...walls
      .filter(({ value }) => value < SHOWN_WALL)
      .flatMap(({ from, to, value }) => wallMarks(put(from), put(to), fine(value, style))),
  ];
  return {
    kind: 'drawing',
    scene: { marks, box: boundsOfMarks(marks) },
    caption: `Section along the drilled line, scale ${scale.name}`,
  };
}

function placeOfLabel(regions: readonly Region[]): Vec {
  const { minX, maxX, minY, maxY } = boundsOfRegions(regions);
  // Away from the joint, which lies about the origin.
  const y = Math.abs(maxY) > Math.abs(minY) ? maxY - 0.14 * (maxY - minY) : minY + 0.08 * (maxY - minY);
  return { x: minX + 0.5 * (maxX - minX), y };
}

function wallMarks(from: Vec, to: Vec, text: string): readonly Mark[] {
  const at = middle(from, to);
  return [
    { kind: 'path', role: 'dimension', edges: [line(from, to, TAG)], closed: false },
    label(text, { x: at.x + 1, y: at.y + 0.8 }, 1.8, 'left'),
  ];
}

const label = (text: string, at: Vec, height: number, align: 'left' | 'middle' = 'middle'): Mark => ({
  kind: 'text',
  text,
  at,
  height,
  angle: 0,
  align,
  weight: 'regular',
  role: 'dimension',
});

/** Scales of ISO 5455, largest first. */
const SCALES = [
  [2, '2:1'],
  [1, '1:1'],
  [0.5, '1:2'],
  [0.2, '1:5'],
  [0.1, '1:10'],
] as const;

function standardScale(most: number): { readonly factor: number; readonly name: string } {
  const [factor, name] = SCALES.find(([each]) => each <= most) ?? SCALES.at(-1)!;
  return { factor, name };
}
