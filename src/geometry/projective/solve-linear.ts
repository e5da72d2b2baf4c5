/**
 * Solution of n linear equations, each row its n coefficients and the right side, by elimination with the largest pivot of each
 * column (any textbook of numerical mathematics). Throws a RangeError when they have none or many.
 */
export function solveLinear(equations: readonly (readonly number[])[]): number[] {
  const rows = equations.map((row) => [...row]);
  const n = rows.length;
  for (let column = 0; column < n; column++) {
    let pivot = column;
    for (let row = column + 1; row < n; row++) {
      if (Math.abs(rows[row]![column]!) > Math.abs(rows[pivot]![column]!)) pivot = row;
    }
    const top = rows[pivot]!;
    if (top[column] === 0) throw new RangeError('the equations have no one solution');
    rows[pivot] = rows[column]!;
    rows[column] = top;
    for (let row = column + 1; row < n; row++) {
      const below = rows[row]!;
      const share = below[column]! / top[column]!;
      for (let k = column; k <= n; k++) below[k] = below[k]! - share * top[k]!;
    }
  }
  const solution = new Array<number>(n).fill(0);
  for (let row = n - 1; row >= 0; row--) {
    const entries = rows[row]!;
    let rest = entries[n]!;
    for (let k = row + 1; k < n; k++) rest -= entries[k]! * solution[k]!;
    solution[row] = rest / entries[row]!;
  }
  return solution;
}
