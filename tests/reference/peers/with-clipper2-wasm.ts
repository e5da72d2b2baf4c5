import { createRequire } from 'node:module';
import type { MainModule, PathsD } from 'clipper2-wasm/dist/clipper2z.js';

/** The compiled library, ready to use. */
export type Clipper2 = MainModule;

export async function loadClipper2(): Promise<Clipper2> {
  const factory = createRequire(import.meta.url)('clipper2-wasm/dist/umd/clipper2z.js');
  return factory();
}

export function wasmPaths(clipper: Clipper2, loops: readonly (readonly number[])[]): PathsD {
  const paths = new clipper.PathsD();
  for (const flat of loops) {
    const path = clipper.MakePathD([...flat]);
    paths.push_back(path);
    path.delete();
  }
  return paths;
}

/** Round offset; the caller deletes the result. Digits after the point: 1e-6 mm. */
export function offsetWithWasm(clipper: Clipper2, paths: PathsD, by: number, chord: number): PathsD {
  return clipper.InflatePathsD(paths, by, clipper.JoinType.Round, clipper.EndType.Polygon, 2, 6, chord);
}

export function combineWithWasm(
  clipper: Clipper2,
  kind: 'UnionD' | 'IntersectD' | 'DifferenceD',
  a: PathsD,
  b: PathsD,
): PathsD {
  return clipper[kind](a, b, clipper.FillRule.NonZero, 6);
}
