import type { Vec } from '../api.ts';
import { distance, norm } from '../vec.ts';

/** A traced curve near one of its points, with the tremor of the hand taken out. */
export interface LocalFit {
  readonly at: Vec;
  /** Unit direction of travel. */
  readonly direction: Vec;
  /** Half the length over which it was fitted, mm. */
  readonly reach: number;
}

/** Points on each side at which the fit begins and at which it stops growing. */
const FEWEST = 2;
const MOST = 64;

/**
 * Place and direction of the curve near point i: of the parabola (in x and in y, over the way along the points) through its
 * neighbours by least squares, over as many as it follows within the tolerance (mm). In a closed run neighbours go round.
 */
export function localFit(points: readonly Vec[], i: number, isClosed: boolean, tolerance: number): LocalFit {
  let best: LocalFit | undefined;
  for (let size = FEWEST; size <= MOST; size *= 2) {
    const window = neighboursOf(points, i, size, isClosed);
    const fit = parabolaThrough(window);
    if (fit === undefined) continue;
    if (best !== undefined && fit.residual > tolerance) break;
    best = fit;
    if (window.length >= points.length) break;
  }
  const along = points[Math.min(i + 1, points.length - 1)]!;
  const back = points[Math.max(i - 1, 0)]!;
  const long = distance(back, along);
  return (
    best ?? {
      at: points[i]!,
      direction: { x: (along.x - back.x) / long, y: (along.y - back.y) / long },
      reach: long,
    }
  );
}

interface Sample {
  readonly s: number;
  readonly p: Vec;
}

function neighboursOf(points: readonly Vec[], i: number, size: number, isClosed: boolean): Sample[] {
  const count = points.length;
  const at = (k: number): Vec | undefined => (isClosed ? points[((k % count) + count) % count] : points[k]);
  const samples: Sample[] = [{ s: 0, p: points[i]! }];
  for (const way of [1, -1]) {
    let s = 0;
    let before = points[i]!;
    for (let k = 1; k <= size && samples.length < count; k++) {
      const p = at(i + way * k);
      if (p === undefined) break;
      s += distance(before, p);
      samples.push({ s: way * s, p });
      before = p;
    }
  }
  return samples;
}

function parabolaThrough(samples: readonly Sample[]): (LocalFit & { readonly residual: number }) | undefined {
  if (samples.length < 3) return undefined;
  const reach = Math.max(...samples.map(({ s }) => Math.abs(s)));
  // Sums of powers of the way, scaled to its reach so that they stay near 1.
  const m = [0, 0, 0, 0, 0];
  const x = [0, 0, 0];
  const y = [0, 0, 0];
  for (const { s, p } of samples) {
    let power = 1;
    for (let k = 0; k < 5; k++) {
      m[k]! += power;
      if (k < 3) {
        x[k]! += power * p.x;
        y[k]! += power * p.y;
      }
      power *= s / reach;
    }
  }
  const cx = solve(m, x);
  const cy = solve(m, y);
  const speed = norm(cx[1], cy[1]);
  if (!(speed > 0) || !Number.isFinite(speed)) return undefined;
  let residual = 0;
  for (const { s, p } of samples) {
    const t = s / reach;
    const off = norm(cx[0] + t * (cx[1] + t * cx[2]) - p.x, cy[0] + t * (cy[1] + t * cy[2]) - p.y);
    residual = Math.max(residual, off);
  }
  return { at: { x: cx[0], y: cy[0] }, direction: { x: cx[1] / speed, y: cy[1] / speed }, reach, residual };
}

/** Solves the symmetric system of the parabola by Cramer's rule: rows (m0 m1 m2), (m1 m2 m3), (m2 m3 m4). */
function solve(m: readonly number[], r: readonly number[]): [number, number, number] {
  const [a, b, c, d, e] = m as [number, number, number, number, number];
  const [p, q, s] = r as [number, number, number];
  const determinant = a * (c * e - d * d) - b * (b * e - c * d) + c * (b * d - c * c);
  return [
    (p * (c * e - d * d) - b * (q * e - d * s) + c * (q * d - c * s)) / determinant,
    (a * (q * e - s * d) - p * (b * e - c * d) + c * (b * s - c * q)) / determinant,
    (a * (c * s - q * d) - b * (b * s - q * c) + p * (b * d - c * c)) / determinant,
  ];
}
