import {
  arc,
  boundsOfRegions,
  type EdgeTag,
  line,
  offsetRegions,
  openRegions,
  type Region,
  STAY,
  subtractRegions,
  transformRegion,
  type Vec,
  vec,
} from '../../geometry/index.ts';
import type { PatchShape } from './api.ts';

const SIDE: EdgeTag = { id: 'patch', role: 'routed' };

/** Sizes are found to within this share. */
const FINEST = 1e-4;

/** The largest size tried, in sizes of the flaw. */
const MOST = 64;

/**
 * The smallest patch of a shape that holds a flaw, its length along the grain and through the middle of the flaw. No corner of it is tighter
 * than `round`, mm. A patch is never narrower than 3 × `round`, so that the cutter has room in its recess.
 */
export function patchOutline(
  flaw: Region,
  grain: number,
  {
    shape,
    slenderness,
    round,
  }: { readonly shape: PatchShape; readonly slenderness: number; readonly round: number },
): Region {
  const level = transformRegion(flaw, { ...STAY, turn: -grain });
  const box = boundsOfRegions([level]);
  const middle = vec((box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2);
  const size = Math.max(box.maxX - box.minX, box.maxY - box.minY);
  const at = (width: number): Region => shaped(shape, middle, width, slenderness, round);
  const holds = (width: number) => subtractRegions([level], [at(width)]).length === 0;
  let low = 3 * round;
  let high = Math.max(low, size * MOST);
  if (holds(low)) high = low;
  while (high - low > FINEST * low) {
    const width = (low + high) / 2;
    if (holds(width)) high = width;
    else low = width;
  }
  return transformRegion(at(high), { ...STAY, turn: grain });
}

/** As wide as asked across its middle, and as long as its slenderness says before its points are rounded. */
function shaped(shape: PatchShape, middle: Vec, width: number, slenderness: number, round: number): Region {
  const half = (width * slenderness) / 2;
  const [left, right] = [vec(middle.x - half, middle.y), vec(middle.x + half, middle.y)];
  const rise = width / 2;
  const [top, bottom] = [vec(middle.x, middle.y + rise), vec(middle.x, middle.y - rise)];
  const radius = (half * half + rise * rise) / (2 * rise);
  const edges =
    shape === 'boat'
      ? [
          arc(left, right, vec(middle.x, bottom.y + radius), 1, SIDE),
          arc(right, left, vec(middle.x, top.y - radius), 1, SIDE),
        ]
      : [line(left, bottom, SIDE), line(bottom, right, SIDE), line(right, top, SIDE), line(top, left, SIDE)];
  const [opened] = openRegions([{ outer: { edges }, holes: [] }], round);
  return opened!;
}

/** The flaw with sound wood round it. */
export function flawWithMargin(flaw: Region, margin: number): Region {
  if (margin === 0) return flaw;
  return offsetRegions([{ outer: flaw.outer, holes: [] }], margin)[0]!;
}
