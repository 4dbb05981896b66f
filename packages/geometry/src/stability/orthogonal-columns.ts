// A growing and shrinking set of columns with its thin QR factors: adding a column orthogonalises it twice against the
// others (Gram-Schmidt with one repeat), removing one repairs R with plane rotations (Golub and Van Loan, "Matrix
// Computations", section on updating factorisations; from memory). Q' b is kept with them for the one right side b.

/** No unit. What is left of a column after orthogonalising must exceed this share of it, else it depends on the others. */
const DEPENDENT = 1e-11;

export class OrthogonalColumns {
  readonly #right: Float64Array;
  readonly #members: number[] = [];
  readonly #present = new Set<number>();
  /** Orthonormal columns. */
  readonly #q: Float64Array[] = [];
  /** Upper triangle by columns: the first k + 1 numbers of #r[k] count. */
  readonly #r: Float64Array[] = [];
  /** Q' b. */
  readonly #shares: number[] = [];

  constructor(right: Float64Array) {
    this.#right = right;
  }

  has(column: number): boolean {
    return this.#present.has(column);
  }

  members(): readonly number[] {
    return this.#members;
  }

  /** Takes the column in; false when it depends on those already there (nothing is changed then). */
  add(column: number, vector: Float64Array): boolean {
    const whole = norm(vector);
    const rest = Float64Array.from(vector);
    // The column itself has few entries. What rounding leaves of the others in the rest is taken out once more.
    const own = rowsOf(vector);
    const top = Float64Array.from([...this.#q.map((q) => dotIn(own, q, vector)), 0]);
    this.#q.forEach((q, k) => {
      subtract(rest, q, top[k] ?? 0);
    });
    this.#q.forEach((q, k) => {
      const part = dot(q, rest);
      top[k] = (top[k] ?? 0) + part;
      subtract(rest, q, part);
    });
    const left = norm(rest);
    if (!(left > DEPENDENT * whole)) return false;
    top[this.#q.length] = left;
    for (let row = 0; row < rest.length; row += 1) rest[row] = (rest[row] ?? 0) / left;
    this.#q.push(rest);
    this.#r.push(top);
    this.#shares.push(dot(rest, this.#right));
    this.#members.push(column);
    this.#present.add(column);
    return true;
  }

  /** Lets the column go. */
  remove(column: number): void {
    const place = this.#members.indexOf(column);
    if (place < 0) return;
    this.#present.delete(column);
    this.#members.splice(place, 1);
    this.#r.splice(place, 1);
    for (let k = place; k < this.#r.length; k += 1) this.#rotateAway(k);
    this.#q.pop();
    this.#shares.pop();
  }

  /** The coefficients, in the order of `members`, that bring the columns nearest to the right side. */
  solve(): Float64Array {
    const answer = Float64Array.from(this.#shares);
    for (let k = answer.length - 1; k >= 0; k -= 1) {
      const column = this.#r[k] ?? answer;
      const value = (answer[k] ?? 0) / (column[k] ?? 1);
      for (let i = 0; i < k; i += 1) answer[i] = (answer[i] ?? 0) - value * (column[i] ?? 0);
      answer[k] = value;
    }
    return answer;
  }

  /** Zeroes the entry below the diagonal of column k by turning rows k and k + 1 of R, and columns k and k + 1 of Q. */
  #rotateAway(k: number): void {
    const column = this.#r[k];
    const [a, b] = [column?.[k] ?? 0, column?.[k + 1] ?? 0];
    const length = Math.hypot(a, b);
    const [c, s] = [a / length, b / length];
    for (let j = k; j < this.#r.length; j += 1) {
      const target = this.#r[j];
      if (target === undefined) continue;
      const [upper, lower] = [target[k] ?? 0, target[k + 1] ?? 0];
      target[k] = c * upper + s * lower;
      target[k + 1] = c * lower - s * upper;
    }
    const [left, right] = [this.#shares[k] ?? 0, this.#shares[k + 1] ?? 0];
    this.#shares[k] = c * left + s * right;
    this.#shares[k + 1] = c * right - s * left;
    const [first, second] = [this.#q[k], this.#q[k + 1]];
    if (first === undefined || second === undefined) return;
    for (let row = 0; row < first.length; row += 1) {
      const [left, right] = [first[row] ?? 0, second[row] ?? 0];
      first[row] = c * left + s * right;
      second[row] = c * right - s * left;
    }
  }
}

/** Rows in which the vector is not 0. */
function rowsOf(vector: Float64Array): readonly number[] {
  const rows: number[] = [];
  vector.forEach((value, row) => {
    if (value !== 0) rows.push(row);
  });
  return rows;
}

/** The product over some rows. */
function dotIn(rows: readonly number[], a: Float64Array, b: Float64Array): number {
  let total = 0;
  for (const row of rows) total += (a[row] ?? 0) * (b[row] ?? 0);
  return total;
}

function subtract(target: Float64Array, column: Float64Array, share: number): void {
  for (let row = 0; row < target.length; row += 1) target[row] = (target[row] ?? 0) - share * (column[row] ?? 0);
}

function dot(a: Float64Array, b: Float64Array): number {
  let total = 0;
  for (let row = 0; row < a.length; row += 1) total += (a[row] ?? 0) * (b[row] ?? 0);
  return total;
}

const norm = (a: Float64Array): number => Math.sqrt(dot(a, a));
