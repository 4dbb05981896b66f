// A growing and shrinking set of columns with its thin QR factors: adding a column orthogonalises it twice against the
// others (Gram-Schmidt with one repeat), removing one repairs R with plane rotations (Golub and Van Loan, "Matrix
// Computations", section on updating factorisations; from memory).

/** No unit. What is left of a column after orthogonalising must exceed this share of it, else it depends on the others. */
const DEPENDENT = 1e-11;

export class OrthogonalColumns {
  readonly #rows: number;
  readonly #members: number[] = [];
  readonly #present = new Set<number>();
  /** Orthonormal columns. */
  readonly #q: Float64Array[] = [];
  /** Upper triangle by columns: #r[k] holds k + 1 numbers. */
  readonly #r: number[][] = [];

  constructor(rows: number) {
    this.#rows = rows;
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
    const top = new Array<number>(this.#q.length).fill(0);
    for (let pass = 0; pass < 2; pass += 1) {
      this.#q.forEach((q, k) => {
        const part = dot(q, rest);
        top[k] = (top[k] ?? 0) + part;
        for (let row = 0; row < this.#rows; row += 1) rest[row] = (rest[row] ?? 0) - part * (q[row] ?? 0);
      });
    }
    const left = norm(rest);
    if (!(left > DEPENDENT * whole)) return false;
    this.#q.push(rest.map((value) => value / left));
    this.#r.push([...top, left]);
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
  }

  /** The coefficients, in the order of `members`, that bring the columns nearest to `right`. */
  solve(right: Float64Array): Float64Array {
    const count = this.#members.length;
    const answer = new Float64Array(count);
    for (let k = count - 1; k >= 0; k -= 1) {
      let value = dot(this.#q[k] ?? answer, right);
      for (let j = k + 1; j < count; j += 1) value -= (this.#r[j]?.[k] ?? 0) * (answer[j] ?? 0);
      answer[k] = value / (this.#r[k]?.[k] ?? 1);
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
    column?.pop();
    const [first, second] = [this.#q[k], this.#q[k + 1]];
    if (first === undefined || second === undefined) return;
    for (let row = 0; row < this.#rows; row += 1) {
      const [left, right] = [first[row] ?? 0, second[row] ?? 0];
      first[row] = c * left + s * right;
      second[row] = c * right - s * left;
    }
  }
}

function dot(a: Float64Array, b: Float64Array): number {
  let total = 0;
  for (let row = 0; row < a.length; row += 1) total += (a[row] ?? 0) * (b[row] ?? 0);
  return total;
}

function norm(a: Float64Array): number {
  return Math.sqrt(dot(a, a));
}
