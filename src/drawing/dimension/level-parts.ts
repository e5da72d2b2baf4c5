import type { PlacedPart, StandingBase } from '../../base/index.ts';
import { directionToFrame, pointToFrame, type Vec } from '../../geometry/index.ts';
import type { Camera } from '../view/api.ts';
import type { Dimension } from './api.ts';
import { cornersInWorld } from './corners-in-world.ts';

/** Sine of the steepest length that is called level. */
const LEVEL = 0.02;
/** A part shows its length where it runs across the picture with at least this cosine. */
const ACROSS = 0.9;
/** mm: heights that differ by less are one, and less over the floor is on it. */
const SAME = 0.05;

/** Heights over the floor of the undersides of rails, ties and stretchers that run across the picture. */
export function railDimensions({ parts, top }: StandingBase, camera: Camera): readonly Dimension[] {
  const found = new Map<number, { readonly at: Vec; readonly label: string }>();
  for (const part of parts) {
    if (!isLevel(part) || Math.abs(directionToFrame(camera, part.frame.y).x) < ACROSS) continue;
    const corners = cornersInWorld(part).map((p) => pointToFrame(camera, p));
    const lowest = Math.min(...corners.map(({ y }) => y));
    if (lowest < SAME || lowest > top.level - SAME) continue;
    const at = corners
      .filter(({ y }) => y < lowest + SAME)
      .reduce((left, corner) => (corner.x < left.x ? corner : left));
    const key = Math.round(lowest / SAME);
    const before = found.get(key);
    if (before === undefined || at.x < before.at.x) found.set(key, { at, label: part.label });
  }
  return [...found.values()].map(({ at, label }) => ({
    kind: 'length',
    name: `${label}, underside over the floor`,
    from: { x: at.x, y: 0 },
    to: { x: at.x, y: at.y },
    along: Math.PI / 2,
    side: 'left',
  }));
}

/** In plan: how far rows of level parts reach, from the outside of the first to the outside of the last, square to their length. */
export function spacingDimensions(parts: readonly PlacedPart[], camera: Camera): readonly Dimension[] {
  const level = parts.filter(isLevel);
  return [...new Set(level.map(({ place }) => place))].flatMap((place): readonly Dimension[] => {
    const row = level.filter((part) => part.place === place);
    const along = directionToFrame(camera, row[0]!.frame.y);
    const isParallel = row.every(
      ({ frame }) => Math.abs(dot(directionToFrame(camera, frame.y), along)) > 1 - 1e-9,
    );
    const across = Math.abs(along.x) > 1 - 1e-9 ? 'y' : Math.abs(along.y) > 1 - 1e-9 ? 'x' : undefined;
    if (row.length < 2 || !isParallel || across === undefined) return [];
    const corners = row.flatMap(cornersInWorld).map((p) => pointToFrame(camera, p));
    const [from, to] = [
      corners.reduce((a, b) => (b[across] < a[across] ? b : a)),
      corners.reduce((a, b) => (b[across] > a[across] ? b : a)),
    ];
    return [
      {
        kind: 'length',
        name: `${row[0]!.label}, outside to outside`,
        from: { x: from.x, y: from.y },
        to: { x: to.x, y: to.y },
        along: across === 'x' ? 0 : Math.PI / 2,
        side: across === 'x' ? 'below' : 'left',
      },
    ];
  });
}

const isLevel = ({ frame }: PlacedPart): boolean => Math.abs(frame.y.z) < LEVEL;

const dot = (a: Vec, b: Vec): number => a.x * b.x + a.y * b.y;
