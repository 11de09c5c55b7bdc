/**
 * Solves a symmetric positive definite system whose rows hold their diagonal first and then the entries before it
 * (row i: A(i,i), A(i,i-1), A(i,i-2) ...), by Cholesky's factorisation within the band (textbook). `fixed` gives
 * unknowns their values beforehand.
 */
export function bandedSolution(
  matrix: readonly (readonly number[])[],
  right: readonly number[],
  fixed: ReadonlyMap<number, number> = new Map(),
): readonly number[] {
  const rows = matrix.map((row) => [...row]);
  const b = [...right];
  for (const [at, value] of fixed) fix(rows, b, at, value);
  for (const [i, row] of rows.entries()) {
    for (let off = Math.min(i, row.length - 1); off >= 0; off--) {
      const other = rows[i - off] ?? row;
      let sum = row[off] ?? 0;
      for (let k = off + 1; k < row.length && k <= i; k++) sum -= (row[k] ?? 0) * (other[k - off] ?? 0);
      row[off] = off === 0 ? Math.sqrt(sum) : sum / (other[0] ?? 1);
    }
    let value = b[i] ?? 0;
    for (let k = 1; k < row.length && k <= i; k++) value -= (row[k] ?? 0) * (b[i - k] ?? 0);
    b[i] = value / (row[0] ?? 1);
  }
  for (let i = rows.length - 1; i >= 0; i--) {
    const row = rows[i] ?? [];
    const value = (b[i] ?? 0) / (row[0] ?? 1);
    b[i] = value;
    for (let k = 1; k < row.length && k <= i; k++) b[i - k] = (b[i - k] ?? 0) - (row[k] ?? 0) * value;
  }
  return b;
}

/** Gives one unknown its value, and the equations of the others what follows from it. */
function fix(rows: number[][], b: number[], at: number, value: number): void {
  const width = rows[at]?.length ?? 0;
  for (let off = 1; off < width; off++) {
    const [before, after] = [rows[at], rows[at + off]];
    if (before && at - off >= 0) {
      b[at - off] = (b[at - off] ?? 0) - (before[off] ?? 0) * value;
      before[off] = 0;
    }
    if (after) {
      b[at + off] = (b[at + off] ?? 0) - (after[off] ?? 0) * value;
      after[off] = 0;
    }
  }
  const own = rows[at];
  if (own) own[0] = 1;
  b[at] = value;
}
