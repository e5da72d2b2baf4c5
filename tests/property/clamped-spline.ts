import type { Vec } from '../../src/geometry/index.ts';

/**
 * The clamped C2 cubic spline through points with chord length as parameter, sampled evenly in it: a batten held at both ends, solved
 * here by Gauss elimination on the full matrix of its second derivatives. Written apart from the program: the textbook equations (a
 * standard result of numerical analysis, as in any text on spline interpolation).
 */
export function clampedSpline(
  points: readonly Vec[],
  leaving: Vec,
  arriving: Vec,
): (samples: number) => Vec[] {
  const steps = points.slice(1).map((p, index) => Math.hypot(p.x - points[index]!.x, p.y - points[index]!.y));
  const x = moments(
    points.map((p) => p.x),
    steps,
    leaving.x,
    arriving.x,
  );
  const y = moments(
    points.map((p) => p.y),
    steps,
    leaving.y,
    arriving.y,
  );
  const total = steps.reduce((sum, step) => sum + step, 0);
  return (samples) =>
    Array.from({ length: samples + 1 }, (_, index) => {
      let s = (total * index) / samples;
      let span = 0;
      while (span < steps.length - 1 && s > steps[span]!) {
        s -= steps[span]!;
        span += 1;
      }
      const h = steps[span]!;
      return {
        x: valueAt(points[span]!.x, points[span + 1]!.x, x[span]!, x[span + 1]!, h, s),
        y: valueAt(points[span]!.y, points[span + 1]!.y, y[span]!, y[span + 1]!, h, s),
      };
    });
}

function valueAt(a: number, b: number, ma: number, mb: number, h: number, s: number): number {
  const [t, u] = [s / h, 1 - s / h];
  return u * a + t * b + (((u ** 3 - u) * ma + (t ** 3 - t) * mb) * (h * h)) / 6;
}

/** Second derivatives at the points. */
function moments(values: readonly number[], steps: readonly number[], first: number, last: number): number[] {
  const n = values.length;
  const rows = Array.from({ length: n }, () => new Array<number>(n + 1).fill(0));
  const slope = (index: number): number => (values[index + 1]! - values[index]!) / steps[index]!;
  rows[0]![0] = 2 * steps[0]!;
  rows[0]![1] = steps[0]!;
  rows[0]![n] = 6 * (slope(0) - first);
  for (let i = 1; i < n - 1; i += 1) {
    rows[i]![i - 1] = steps[i - 1]!;
    rows[i]![i] = 2 * (steps[i - 1]! + steps[i]!);
    rows[i]![i + 1] = steps[i]!;
    rows[i]![n] = 6 * (slope(i) - slope(i - 1));
  }
  rows[n - 1]![n - 2] = steps[n - 2]!;
  rows[n - 1]![n - 1] = 2 * steps[n - 2]!;
  rows[n - 1]![n] = 6 * (last - slope(n - 2));
  for (let i = 0; i < n; i += 1) {
    for (let j = 0; j < n; j += 1) {
      if (j === i) continue;
      const factor = rows[j]![i]! / rows[i]![i]!;
      for (let k = i; k <= n; k += 1) rows[j]![k] = rows[j]![k]! - factor * rows[i]![k]!;
    }
  }
  return rows.map((row, index) => row[n]! / row[index]!);
}
