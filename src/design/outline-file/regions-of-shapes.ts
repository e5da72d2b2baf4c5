import {
  areaOfRegions,
  boundsOfRegions,
  intersectRegions,
  type Outline,
  type Region,
  regionsFromLoops,
  type SvgShape,
  uniteRegions,
} from '../../geometry/index.ts';

/** Areas that differ by less than this share are one: what a drawing program rounds away. */
const SAME_AREA = 1e-6;

interface Piece {
  readonly regions: readonly Region[];
  readonly isFilled: boolean;
}

/**
 * The regions that a drawing shows. Each shape has the inside that its fill rule gives it (SVG 2, section 13.4.2), and
 * shapes that overlap unite. A shape that is drawn as a line only (`fill: none`) and lies wholly inside another is a hole in
 * it, as makers draw holes; filled, it is covered by the other and changes nothing: `covered` counts those.
 */
export function regionsOfShapes(
  outlines: readonly Outline[],
  shapes: readonly SvgShape[],
): { readonly regions: readonly Region[]; readonly covered: number } {
  const pieces: Piece[] = [];
  let covered = 0;
  for (const { loops, rule, isFilled } of shapes) {
    const own = loops.map((loop) => outlines[loop]!);
    for (const region of regionsFromLoops(own, rule === 'evenodd' ? 'odd' : 'nonzero')) {
      covered += addPiece(pieces, { regions: [region], isFilled });
    }
  }
  // What is left lies apart or one inside the other: every second loop inwards is a hole.
  const loops = pieces.flatMap(({ regions }) => regions.flatMap(({ outer, holes }) => [outer, ...holes]));
  return { regions: regionsFromLoops(loops, 'odd'), covered };
}

/** Unites a piece with those that it overlaps, until all of them lie apart or one inside another; counts the covered ones. */
function addPiece(pieces: Piece[], added: Piece): number {
  let piece = added;
  let covered = 0;
  for (let at = 0; at < pieces.length; ) {
    const other = pieces[at]!;
    if (liesApart(piece, other)) {
      at++;
      continue;
    }
    pieces.splice(at, 1);
    const regions = uniteRegions(other.regions, piece.regions);
    if (isCovered(areaOfRegions(regions), other, piece)) covered++;
    piece = {
      regions,
      isFilled: other.isFilled && piece.isFilled,
    };
    // Grown, it may overlap those passed already.
    at = 0;
  }
  pieces.push(piece);
  return covered;
}

/** Is one of two pieces lost in the other, though it is not the same once more? */
function isCovered(united: number, a: Piece, b: Piece): boolean {
  const [areaA, areaB] = [areaOfRegions(a.regions), areaOfRegions(b.regions)];
  const small = SAME_AREA * Math.min(areaA, areaB);
  return united - Math.max(areaA, areaB) <= small && Math.abs(areaA - areaB) > small;
}

/** Do two pieces have no area in common, or is one a hole, or an island in a hole, of the other? */
function liesApart(a: Piece, b: Piece): boolean {
  if (!boundsMeet(a, b)) return true;
  const common = areaOfRegions(intersectRegions(a.regions, b.regions));
  const [areaA, areaB] = [areaOfRegions(a.regions), areaOfRegions(b.regions)];
  const small = SAME_AREA * Math.min(areaA, areaB);
  if (common <= small) return true;
  const inner = areaA < areaB ? a : b;
  // Drawn twice, a shape is one.
  if (Math.abs(areaA - areaB) <= small) return false;
  return !inner.isFilled && Math.min(areaA, areaB) - common <= small;
}

function boundsMeet(a: Piece, b: Piece): boolean {
  const [p, q] = [boundsOfRegions(a.regions), boundsOfRegions(b.regions)];
  return p.minX <= q.maxX && q.minX <= p.maxX && p.minY <= q.maxY && q.minY <= p.maxY;
}
