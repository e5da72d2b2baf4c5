import { Clipper, EndType, FillRule, JoinType, type PathsD } from 'clipper2-ts';

/** Digits after the point to which the library rounds: 1e-7 mm. */
const DIGITS = 7;

export function offsetWithClipper(loops: readonly (readonly number[])[], by: number, chord: number): PathsD {
  return Clipper.inflatePathsD(pathsOf(loops), by, JoinType.Round, EndType.Polygon, 2, DIGITS, chord);
}

export function combineWithClipper(
  kind: 'unionD' | 'intersectD' | 'differenceD' | 'xorD',
  a: readonly (readonly number[])[],
  b: readonly (readonly number[])[],
): PathsD {
  return Clipper[kind](pathsOf(a), pathsOf(b), FillRule.NonZero, DIGITS);
}

export function areaWithClipper(paths: PathsD): number {
  return Clipper.areaPathsD(paths);
}

/** Area in one of two sets of loops and not in both. */
export function areaApart(a: PathsD, b: readonly (readonly number[])[]): number {
  return Math.abs(Clipper.areaPathsD(Clipper.xorD(a, pathsOf(b), FillRule.NonZero, DIGITS)));
}

export function pathsOf(loops: readonly (readonly number[])[]): PathsD {
  return loops.map((flat) => {
    const path = [];
    for (let i = 0; i + 1 < flat.length; i += 2) path.push({ x: flat[i]!, y: flat[i + 1]! });
    return path;
  });
}
