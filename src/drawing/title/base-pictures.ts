import type { PlacedPart, StandingBase } from '../../base/index.ts';
import {
  arc,
  boundsOfRegions,
  distance3,
  type Edge,
  line,
  pointToFrame,
  pointToWorld,
  type Vec,
  type Vec3,
} from '../../geometry/index.ts';
import { type BaseSide, dimensionsOfBase } from '../dimension/dimensions-of-base.ts';
import type { Camera, View, ViewOptions } from '../view/api.ts';
import { CAMERAS, PICTORIAL } from '../view/cameras.ts';
import { viewOfParts } from '../view/view-of-parts.ts';
import type { Picture, PictureLine } from './picture.ts';

const TAG = { id: 'top', role: 'left' } as const;

const NAMES: Readonly<Record<BaseSide, string>> = {
  front: 'Front',
  left: 'From the left',
  right: 'From the right',
  plan: 'Plan, without the top',
};

/** A base from the front, a side or above: its view, the top in thin double-dotted chain lines, middle lines and dimensions. */
export function basePicture(base: StandingBase, side: BaseSide, options: ViewOptions = {}): Picture {
  const camera = CAMERAS[side];
  const view = viewOfParts(base.parts, camera, { tolerance: 0.05, hiddenApart: 5, ...options });
  return {
    name: NAMES[side],
    view,
    lines: [...topLines(base, camera, side), ...middleLines(view, base, side)],
    dimensions: dimensionsOfBase(base, side, view),
  };
}

/** A base as one sees it in the room, from the front left and above; no dimensions. */
export function pictorialOf(parts: readonly PlacedPart[], camera: Camera = PICTORIAL): Picture {
  const view = viewOfParts(parts, camera, { tolerance: 0.05, hidden: false });
  return { name: 'Pictorial view', view, lines: [], dimensions: [] };
}

/** The outline of the top, which is not part of the base. */
function topLines({ top }: StandingBase, camera: Camera, side: BaseSide): readonly PictureLine[] {
  const { length, width, thickness, level, shape } = top;
  if (side === 'plan' && shape === 'round') {
    const start = { x: length / 2, y: 0 };
    return [{ role: 'phantom', edges: [arc(start, start, { x: 0, y: 0 }, 1, TAG)] }];
  }
  const corners: readonly Vec3[] = [-1, 1].flatMap((x) =>
    [-1, 1].flatMap((y) =>
      [0, thickness].map((z) => ({ x: (x * length) / 2, y: (y * width) / 2, z: level + z })),
    ),
  );
  return [{ role: 'phantom', edges: frameRound(corners.map((p) => pointToFrame(camera, p))) }];
}

function frameRound(points: readonly Vec[]): readonly Edge[] {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [low, high] = [Math.min(...ys), Math.max(...ys)];
  const corners: readonly Vec[] = [
    { x: left, y: low },
    { x: right, y: low },
    { x: right, y: high },
    { x: left, y: high },
  ];
  return corners.map((from, i) => line(from, corners[(i + 1) % 4]!, TAG));
}

/** Lines through the middle of the base, where it is alike on both sides of them. */
function middleLines({ box }: View, { top, parts }: StandingBase, side: BaseSide): readonly PictureLine[] {
  const lines: PictureLine[] = [];
  const isPlan = side === 'plan';
  const across = side === 'front' || isPlan ? 'x' : 'y';
  if (isSymmetric(parts, across)) {
    const highest = isPlan ? Math.max(box.maxY, top.width / 2) : top.level + top.thickness;
    const lowest = isPlan ? Math.min(box.minY, -top.width / 2) : box.minY;
    lines.push(axis({ x: 0, y: lowest }, { x: 0, y: highest }));
  }
  if (isPlan && isSymmetric(parts, 'y')) {
    const half = Math.max(top.length / 2, -box.minX, box.maxX);
    lines.push(axis({ x: -half, y: 0 }, { x: half, y: 0 }));
  }
  return lines;
}

const axis = (from: Vec, to: Vec): PictureLine => ({ role: 'axis', edges: [line(from, to, TAG)], past: 4 });

/** mm: a mirrored copy stands where it should to the last digits. */
const MIRRORED = 1e-3;

/** Has every part a twin on the other side of the middle plane, or does it stand across it? */
function isSymmetric(parts: readonly PlacedPart[], across: 'x' | 'y'): boolean {
  const middles = parts.map((part) => ({ name: part.drawn.name, at: middleOfPart(part) }));
  return middles.every(({ name, at }) =>
    middles.some(
      (other) => other.name === name && distance3(other.at, { ...at, [across]: -at[across] }) < MIRRORED,
    ),
  );
}

function middleOfPart({ frame, silhouette, drawn }: PlacedPart): Vec3 {
  const { minX, maxX, minY, maxY } = boundsOfRegions(silhouette);
  return pointToWorld(frame, { x: (minX + maxX) / 2, y: (minY + maxY) / 2, z: -drawn.thickness / 2 });
}
