// Small dense linear algebra: symmetric positive definite systems by Cholesky's decomposition (Golub and Van Loan, Matrix
// Computations, 4.2; from memory). Matrices are row by row.

/** The lower triangle L with A = L L'; null when A is not positive definite. */
export function cholesky(a: Float64Array, size: number): Float64Array | null {
  const lower = new Float64Array(size * size);
  for (let row = 0; row < size; row += 1) {
    for (let column = 0; column <= row; column += 1) {
      let rest = a[row * size + column] ?? 0;
      for (let k = 0; k < column; k += 1) rest -= (lower[row * size + k] ?? 0) * (lower[column * size + k] ?? 0);
      if (row > column) {
        lower[row * size + column] = rest / (lower[column * size + column] ?? 1);
      } else {
        if (!(rest > 0)) return null;
        lower[row * size + row] = Math.sqrt(rest);
      }
    }
  }
  return lower;
}

/** x with L L' x = b. */
export function solveCholesky(lower: Float64Array, size: number, b: ArrayLike<number>): Float64Array {
  const x = solveLower(lower, size, b);
  for (let row = size - 1; row >= 0; row -= 1) {
    for (let k = row + 1; k < size; k += 1) x[row] = (x[row] ?? 0) - (lower[k * size + row] ?? 0) * (x[k] ?? 0);
    x[row] = (x[row] ?? 0) / (lower[row * size + row] ?? 1);
  }
  return x;
}

/** x with L x = b. */
export function solveLower(lower: Float64Array, size: number, b: ArrayLike<number>): Float64Array {
  const x = Float64Array.from(b);
  for (let row = 0; row < size; row += 1) {
    for (let k = 0; k < row; k += 1) x[row] = (x[row] ?? 0) - (lower[row * size + k] ?? 0) * (x[k] ?? 0);
    x[row] = (x[row] ?? 0) / (lower[row * size + row] ?? 1);
  }
  return x;
}

/** The inverse of A = L L'. */
export function inverseCholesky(lower: Float64Array, size: number): Float64Array {
  const inverse = new Float64Array(size * size);
  const unit = new Float64Array(size);
  for (let column = 0; column < size; column += 1) {
    unit.fill(0);
    unit[column] = 1;
    const x = solveCholesky(lower, size, unit);
    for (let row = 0; row < size; row += 1) inverse[row * size + column] = x[row] ?? 0;
  }
  return inverse;
}

/** J C J' for a Jacobian of `outputs` rows: how an uncertainty C of `size` inputs comes out. */
export function propagate(jacobian: readonly Float64Array[], covariance: ArrayLike<number>): Float64Array {
  const outputs = jacobian.length;
  const through = new Float64Array(outputs * outputs);
  jacobian.forEach((first, a) => {
    jacobian.forEach((second, b) => {
      let sum = 0;
      for (let i = 0; i < first.length; i += 1) {
        for (let j = 0; j < second.length; j += 1) {
          sum += (first[i] ?? 0) * (covariance[i * first.length + j] ?? 0) * (second[j] ?? 0);
        }
      }
      through[a * outputs + b] = sum;
    });
  });
  return through;
}
