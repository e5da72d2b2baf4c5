import type { JointSection } from '../../base/index.ts';
import type { NamedPicture, PictureLine } from '../../drawing/index.ts';
import {
  type Box,
  boundsOfRegions,
  intersectRegions,
  polygonOutline,
  type Region,
  type Vec,
} from '../../geometry/index.ts';

/** What is shown round the joint beyond its own bores, mm of wood. */
const ROUND = 16;
/** Room for it on paper without its figures, mm. */
const MOST = { small: { width: 36, height: 40 }, large: { width: 56, height: 56 } } as const;
/** Walls thicker than this, mm, are no concern. */
const SHOWN_WALL = 40;
const TAG = { id: 'section', role: 'left' } as const;

/** The joint cut open along the drilled line: both parts, what is bored and what goes in, and the least wood left. */
export function sectionPicture(
  section: JointSection,
  labelOf: (part: string) => string,
  size: keyof typeof MOST = 'small',
): NamedPicture {
  const { parts, walls } = section;
  const inner = parts.flatMap(({ bores, tenons }) => [...bores, ...tenons]);
  const box = boundsOfRegions(inner.length > 0 ? inner : parts.flatMap(({ regions }) => regions));
  const seen = parts.map((part) => ({ ...part, regions: intersectRegions(part.regions, [around(box)]) }));
  const all = boundsOfRegions(seen.flatMap(({ regions }) => regions));
  const most = Math.min(MOST[size].width / (all.maxX - all.minX), MOST[size].height / (all.maxY - all.minY));
  return {
    picture: {
      name: 'Section along the drilled line',
      lines: seen.flatMap(({ regions, bores, tenons }) => [
        ...outlines(regions, 'part'),
        ...outlines(bores, 'hidden'),
        ...outlines(tenons, 'part'),
      ]),
      dimensions: [
        ...walls
          .filter(({ value }) => value < SHOWN_WALL)
          .map(({ from, to }) => ({ kind: 'length', name: 'wall', from, to }) as const),
        ...seen.flatMap(({ part, regions }) => {
          const at = inTheWood(regions, all);
          return at === undefined ? [] : [{ kind: 'note', name: 'part', at, words: labelOf(part) } as const];
        }),
      ],
    },
    scale: standardScale(most),
  };
}

function around({ minX, minY, maxX, maxY }: Box): Region {
  const corners: readonly Vec[] = [
    { x: minX - ROUND, y: minY - ROUND },
    { x: maxX + ROUND, y: minY - ROUND },
    { x: maxX + ROUND, y: maxY + ROUND },
    { x: minX - ROUND, y: maxY + ROUND },
  ];
  return { outer: polygonOutline(corners, TAG), holes: [] };
}

function outlines(regions: readonly Region[], role: PictureLine['role']): readonly PictureLine[] {
  return regions.flatMap(({ outer, holes }) => [outer, ...holes]).map(({ edges }) => ({ role, edges }));
}

/** A place just within a part, by the side of it that lies nearest to the border of the picture: where its name points. */
function inTheWood(regions: readonly Region[], all: Box): Vec | undefined {
  if (regions.length === 0) return undefined;
  const { minX, minY, maxX, maxY } = boundsOfRegions(regions);
  const [width, height] = [maxX - minX, maxY - minY];
  const low = minY - all.minY < all.maxY - maxY;
  const edge = regions
    .flatMap(({ outer }) => outer.edges)
    .map(({ from, to }) => ({ x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }))
    .toSorted((a, b) => (low ? a.y - b.y : b.y - a.y))[0]!;
  return { x: edge.x + 0.25 * width, y: edge.y + (low ? 1 : -1) * 0.08 * height };
}

/** Scales of ISO 5455, largest first. */
const SCALES = [1, 0.5, 0.2, 0.1] as const;

const standardScale = (most: number): number => SCALES.find((each) => each <= most) ?? SCALES.at(-1)!;
