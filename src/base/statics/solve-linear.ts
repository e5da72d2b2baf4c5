import { FIGURE_ROUNDING } from '../../geometry/index.ts';

/**
 * Solves the square system rows · x = right by elimination with partial pivoting. Nothing when the rows do not fix x: when no
 * more than rounding is left for a pivot.
 */
export function solveLinear(
  rows: readonly (readonly number[])[],
  right: readonly number[],
): number[] | undefined {
  const m = rows.map((row, i) => [...row, right[i]!]);
  const n = m.length;
  const largest = Math.max(...m.flatMap((row) => row.slice(0, n).map(Math.abs)));
  for (let column = 0; column < n; column++) {
    let pivot = column;
    for (let i = column + 1; i < n; i++)
      if (Math.abs(m[i]![column]!) > Math.abs(m[pivot]![column]!)) pivot = i;
    [m[column], m[pivot]] = [m[pivot]!, m[column]!];
    const own = m[column]!;
    if (!(Math.abs(own[column]!) > FIGURE_ROUNDING * largest)) return undefined;
    for (const row of m.slice(column + 1)) {
      const factor = row[column]! / own[column]!;
      for (let j = column; j <= n; j++) row[j]! -= factor * own[j]!;
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    let sum = m[i]![n]!;
    for (let j = i + 1; j < n; j++) sum -= m[i]![j]! * x[j]!;
    x[i] = sum / m[i]![i]!;
  }
  return x;
}
