/** The solution, or what keeps the equations from having exactly one. */
export type LinearSolution = readonly number[] | 'repeats' | 'contradicts' | 'no value';

/** A pivot this small against the largest numbers of its row and column is rounding. */
const smallness = 1e-11;

/** Solves `matrix x = right` by Gaussian elimination with full pivoting, rows and columns scaled to like size. */
export function solveLinear(matrix: readonly (readonly number[])[], right: readonly number[]): LinearSolution {
  const n = right.length;
  const columns = right.map((_, j) => Math.max(...matrix.map((row) => Math.abs(row[j]))) || 1);
  const rows = matrix.map((row, i) => {
    const scaled = row.map((value, j) => value / columns[j]);
    const largest = Math.max(...scaled.map(Math.abs)) || 1;
    return [...scaled.map((value) => value / largest), right[i] / largest];
  });
  if (!rows.flat().every(Number.isFinite)) {
    return 'no value';
  }
  const largestRight = Math.max(...rows.map((row) => Math.abs(row[n])));
  const order = right.map((_, j) => j);
  for (let step = 0; step < n; step++) {
    const [pivotRow, pivotColumn] = largestFrom(rows, step, n);
    [rows[step], rows[pivotRow]] = [rows[pivotRow], rows[step]];
    for (const row of rows) {
      [row[step], row[pivotColumn]] = [row[pivotColumn], row[step]];
    }
    [order[step], order[pivotColumn]] = [order[pivotColumn], order[step]];
    if (Math.abs(rows[step][step]) <= smallness) {
      const isLeft = rows.slice(step).some((row) => Math.abs(row[n]) > smallness * largestRight);
      return isLeft ? 'contradicts' : 'repeats';
    }
    for (const row of rows.slice(step + 1)) {
      const factor = row[step] / rows[step][step];
      for (let j = step; j <= n; j++) {
        row[j] -= factor * rows[step][j];
      }
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let step = n - 1; step >= 0; step--) {
    let sum = rows[step][n];
    for (let j = step + 1; j < n; j++) {
      sum -= rows[step][j] * x[order[j]];
    }
    x[order[step]] = sum / rows[step][step];
  }
  return x.map((value, j) => value / columns[j]);
}

function largestFrom(rows: readonly (readonly number[])[], step: number, n: number): [row: number, column: number] {
  let best: [number, number] = [step, step];
  for (let i = step; i < n; i++) {
    for (let j = step; j < n; j++) {
      if (Math.abs(rows[i][j]) > Math.abs(rows[best[0]][best[1]])) {
        best = [i, j];
      }
    }
  }
  return best;
}
