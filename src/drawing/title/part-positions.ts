import type { JointWork, MadePart } from '../../base/index.ts';
import {
  add3,
  type Box,
  boundsOfEdges,
  boundsOfRegions,
  pointToFrame,
  scale3,
  type Vec,
} from '../../geometry/index.ts';
import type { Dimension } from '../dimension/api.ts';
import type { Camera } from '../view/api.ts';

/** mm: places that differ by less are one, and lengths that differ by less from the overall one say nothing new. */
const SAME = 0.05;
const WORTH = 0.2;
/** Of the cosine between a bore and the line of sight: it is looked into from more than this on. */
const INTO = 0.9;

const UP = Math.PI / 2;

/**
 * Where joints and openings lie along a part, on its left: middles of openings, mortises and holes, shoulders of tenons, all from the lower
 * end, so that no error adds to another.
 */
export function placesAlong(made: MadePart, camera: Camera, box: Box): readonly Dimension[] {
  const openings = made.face.flatMap(({ holes }) => holes.map(({ edges }) => middleOf(boundsOfEdges(edges))));
  const joints = made.work.flatMap((work) => middleOfWork(work, camera));
  const places = [...openings, ...joints].toSorted((a, b) => a.y - b.y);
  const foot = endOf(made, 'low', 'left');
  const found: Vec[] = [];
  for (const at of places) {
    const isNew = !found.some(({ y }) => Math.abs(y - at.y) < SAME);
    if (isNew && at.y - foot.y > WORTH && box.maxY - at.y > WORTH) found.push(at);
  }
  return found.map((at) => ({
    kind: 'length',
    name: 'middle from the end',
    from: foot,
    to: at,
    along: UP,
    side: 'left',
  }));
}

/** From the face side to the middles of what is cut into the edge that is looked at. */
export function placesFromFace(made: MadePart, camera: Camera, box: Box): readonly Dimension[] {
  const found: number[] = [];
  return made.work.flatMap((work): readonly Dimension[] => {
    if (work.kind === 'pocket') return [];
    const axis = pointToFrame({ ...camera, origin: ZERO }, work.own.z);
    // Looked into or through: what runs along the part or across the picture shows its middle in the face's own picture.
    if (Math.abs(axis.z) < INTO) return [];
    const at = pointToFrame(camera, work.own.origin);
    if (found.some((x) => Math.abs(x - at.x) < SAME)) return [];
    found.push(at.x);
    return [
      {
        kind: 'length',
        name: 'middle from the face side',
        from: { x: 0, y: box.maxY },
        to: { x: at.x, y: at.y },
        along: 0,
        side: 'above',
      },
    ];
  });
}

const ZERO = { x: 0, y: 0, z: 0 };

const middleOf = ({ minX, maxX, minY, maxY }: Box): Vec => ({ x: (minX + maxX) / 2, y: (minY + maxY) / 2 });

function middleOfWork(work: JointWork, camera: Camera): readonly Vec[] {
  if (work.kind === 'pocket') {
    const { minX, minY, maxY } = boundsOfRegions(work.region);
    return [{ x: minX, y: (minY + maxY) / 2 }];
  }
  const deep = work.kind === 'tenon' ? 0 : work.depth / 2;
  const { x, y } = pointToFrame(camera, add3(work.own.origin, scale3(work.own.z, deep)));
  return [{ x, y }];
}

/**
 * Lengths of the arrises of the face, on either side, between the corners that the end cuts make: the long and the short points. Only where
 * both ends are sawn right across, and where they differ from the overall length.
 */
export function arrisesOfFace(made: MadePart, box: Box): readonly Dimension[] {
  const corners = cornersOfEnds(made, made.face);
  if (corners === undefined) return [];
  // Between parallel ends both are as long.
  const sides = isSame(corners.left, corners.right) ? (['right'] as const) : (['left', 'right'] as const);
  return sides.flatMap((side): readonly Dimension[] => {
    const [from, to] = corners[side];
    if (isOverall(from, to, box)) return [];
    return [{ kind: 'length', name: `${side} arris of the face`, from, to, along: UP, side }];
  });
}

/** Length of the right arris of the back, as the picture from the right shows it, where it is not that of the face. */
export function arrisesOnEdge(made: MadePart, camera: Camera, box: Box): readonly Dimension[] {
  const depth = -made.sketch.thickness;
  const face = cornersOfEnds(made, made.face)?.right;
  const back = cornersOfEnds(made, made.back)?.right;
  if (face === undefined || back === undefined) return [];
  const same = Math.abs(face[0].y - back[0].y) < WORTH && Math.abs(face[1].y - back[1].y) < WORTH;
  if (same) return [];
  // That of the face stands in the face's own picture.
  const [from, to] = back.map((p): Vec => pointToFrame(camera, { ...p, z: depth })) as [Vec, Vec];
  if (isOverall(from, to, box)) return [];
  const at = (p: Vec): Vec => ({ x: p.x, y: p.y });
  const name = 'right arris of the back';
  return [{ kind: 'length', name, from: at(from), to: at(to), along: UP, side: 'right' }];
}

/** The corner of face or back that lies lowest or highest, of several the one farther to a side. */
export function endOf(made: MadePart, end: 'low' | 'high', side: 'left' | 'right'): Vec {
  const corners = [...made.face, ...made.back].flatMap(({ outer }) => outer.edges.map(({ from }) => from));
  const [up, out] = [end === 'high' ? 1 : -1, side === 'right' ? 1 : -1];
  return corners.reduce((best, p) => {
    const higher = up * (p.y - best.y);
    return higher > SAME || (higher > -SAME && out * (p.x - best.x) > 0) ? p : best;
  });
}

type Ends = readonly [Vec, Vec];

const isSame = (a: Ends, b: Ends): boolean => Math.abs(a[1].y - a[0].y - b[1].y + b[0].y) < WORTH;

const isOverall = (from: Vec, to: Vec, box: Box): boolean =>
  Math.abs(Math.abs(to.y - from.y) - (box.maxY - box.minY)) < WORTH;

/** Left and right corners of the lower and of the upper end cut, each from below. */
function cornersOfEnds(
  made: MadePart,
  regions: MadePart['face'],
): { readonly left: Ends; readonly right: Ends } | undefined {
  const names = new Set(made.cuts.map(({ name }) => name));
  const { minY, maxY } = boundsOfRegions(regions);
  const cuts = regions
    .flatMap(({ outer }) => outer.edges)
    .filter(
      ({ kind, tag, from, to }) =>
        kind === 'line' && names.has(tag.id) && Math.abs(to.y - from.y) < (maxY - minY) / 2,
    )
    .toSorted((a, b) => a.from.y + a.to.y - b.from.y - b.to.y);
  const [low, high] = cuts;
  if (low === undefined || high === undefined || cuts.length !== 2) return undefined;
  const left = (edge: typeof low): Vec => (edge.from.x < edge.to.x ? edge.from : edge.to);
  const right = (edge: typeof low): Vec => (edge.from.x < edge.to.x ? edge.to : edge.from);
  return { left: [left(low), left(high)], right: [right(low), right(high)] };
}
