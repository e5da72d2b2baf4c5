import {
  add,
  areaOfRegions,
  boundsOfRegions,
  clipEdgesToRegions,
  cross3,
  dot3,
  type Edge,
  type EdgeTag,
  type Frame,
  line,
  nearestOnEdges,
  norm,
  planeToFrame,
  polygonOutline,
  type Region,
  SQUARE_TURN,
  scale,
  scale3,
  transformRegion,
  unit3,
  type Vec,
  type Vec3,
} from '../../geometry/index.ts';
import { halfPlaneAt, keepHalfPlane } from '../stand/section.ts';
import type { SolidPart } from './api.ts';
import { mapSlanting } from './map-slanting.ts';
import { similarityTo } from './similarity-to.ts';

/**
 * The section of a part by the x-y plane of a frame (given in the part's own frame), in that frame: exact, but that a slanting plane cuts a
 * round wall along an ellipse, for which chords stand within SECTION_TOLERANCE. Edges keep their identities; `face` and `back` are
 * the lines in which it meets those. Cuts named in `without` are not made.
 */
export function sectionOfPart(
  part: SolidPart,
  frame: Frame,
  without: (name: string) => boolean = () => false,
): readonly Region[] {
  const cuts = part.cuts.filter(({ name }) => !without(name));
  if (norm(frame.z.x, frame.z.y) < SQUARE_TURN) return levelSection(part, frame, cuts);
  const inner = innerFrame(frame);
  const start = Math.abs(frame.z.z) < SQUARE_TURN ? squareSection(part, inner) : mapSlanting(part, inner);
  const section = cuts.reduce<readonly Region[]>((regions, cut) => {
    const { normal, offset } = planeToFrame(inner, cut.plane);
    const within = { x: normal.x, y: normal.y };
    if (norm(within.x, within.y) < SQUARE_TURN) return offset < -SQUARE_TURN ? [] : regions;
    return keepHalfPlane(regions, { normal: within, offset }, cut);
  }, start);
  const to = similarityTo(inner, frame);
  return section.map((region) => transformRegion(region, to));
}

/** A plane along the faces: the outline at its depth. */
function levelSection({ drawn }: SolidPart, frame: Frame, cuts: SolidPart['cuts']): readonly Region[] {
  const depth = frame.origin.z;
  if (depth > SQUARE_TURN || depth < -drawn.thickness - SQUARE_TURN) return [];
  const level = cuts.reduce<readonly Region[]>(
    (regions, cut) => keepHalfPlane(regions, halfPlaneAt(cut, depth), cut),
    [drawn.region],
  );
  const own = { origin: { x: 0, y: 0, z: depth }, x: AXIS_X, y: AXIS_Y, z: AXIS_Z };
  const to = similarityTo(own, frame);
  return level.map((region) => transformRegion(region, to));
}

const AXIS_X: Vec3 = { x: 1, y: 0, z: 0 };
const AXIS_Y: Vec3 = { x: 0, y: 1, z: 0 };
const AXIS_Z: Vec3 = { x: 0, y: 0, z: 1 };

/** A frame in the same plane whose x axis lies along the part's faces and whose y axis climbs towards the face side. */
function innerFrame({ origin, z }: Frame): Frame {
  const x = unit3(cross3(AXIS_Z, z));
  return { origin: scale3(z, dot3(origin, z)), x, y: cross3(z, x), z };
}

/** A plane square to the faces meets the prism in rectangles: one for each stretch of its line that lies in the outline. */
function squareSection({ drawn }: SolidPart, inner: Frame): readonly Region[] {
  const { region, thickness } = drawn;
  const edges = [region.outer, ...region.holes].flatMap((loop) => loop.edges);
  const along = { x: inner.x.x, y: inner.x.y };
  const start = { x: inner.origin.x, y: inner.origin.y };
  const box = boundsOfRegions([region]);
  const reach = [box.minX, box.maxX].flatMap((x) =>
    [box.minY, box.maxY].map((y) => (x - start.x) * along.x + (y - start.y) * along.y),
  );
  const at = (s: number): Vec => add(start, scale(along, s));
  const ray = line(at(Math.min(...reach) - 1), at(Math.max(...reach) + 1), { id: 'section', role: 'left' });
  const placeOf = (p: Vec): number => (p.x - start.x) * along.x + (p.y - start.y) * along.y;
  const bottom = -thickness;
  return clipEdgesToRegions([ray], [region])
    .filter((chain) => chain.length > 0)
    .map((chain): Region => {
      const [from, to] = [chain[0]!.from, chain.at(-1)!.to];
      const [first, last] = [placeOf(from), placeOf(to)];
      const corners = [
        { x: first, y: bottom },
        { x: last, y: bottom },
        { x: last, y: 0 },
        { x: first, y: 0 },
      ];
      const tags = [BACK, tagAt(edges, to), FACE, tagAt(edges, from)];
      return { outer: polygonOutline(corners, tags), holes: [] };
    })
    .filter((each) => areaOfRegions([each]) > 0);
}

const FACE: EdgeTag = { id: 'face', role: 'left' };
const BACK: EdgeTag = { id: 'back', role: 'left' };

const tagAt = (edges: readonly Edge[], p: Vec): EdgeTag => edges[nearestOnEdges(edges, p).index]!.tag;
