// What the corners of all patches can press with, as columns for least squares: along the pull of the tilted weight as far
// as friction goes along with it, or along an edge of the cone of friction. There are many edges and few of them help, so
// a column is worked out only when it is wanted: of all edges of a cone the one helps most that leans the way the corner
// would have to be pushed. Columns are named by numbers: edges + 1 of them a corner, the pull last.

import type { Vec2 } from '../kernel/vec.ts';
import { scale2 } from '../kernel/vec.ts';
import { leanOf } from './cone.ts';
import type { SparseColumns } from './sparse-columns.ts';
import { addColumn, columnDot } from './sparse-columns.ts';

export interface Corner {
  /** Coefficient of friction. */
  readonly friction: number;
  /** The pull: what it has along the two directions of the surface for each unit along the normal. */
  readonly pull: Vec2;
}

/** Says which columns are not to be had. */
export type IsOut = (column: number) => boolean;

/** Edges tried at a corner: the one that leans the right way, and its neighbours for when that one is not to be had. */
const BESIDE = [0, 1, -1];

export class ConeColumns {
  readonly #corners: readonly Corner[];
  /** Three columns a corner: unit forces along the normal and along two directions of the surface, square to each other. */
  readonly #frames: SparseColumns;
  readonly #leans: readonly Vec2[];
  /** Six a corner: products of its three columns with each other. */
  readonly #products: Float64Array;

  constructor(corners: readonly Corner[], frames: SparseColumns, edges: number) {
    this.#corners = corners;
    this.#frames = frames;
    this.#leans = Array.from({ length: edges }, (_, k) => leanOf(k, edges));
    this.#products = productsOf(frames, corners.length);
  }

  get rows(): number {
    return this.#frames.rows;
  }

  /** The corner that presses with a column. */
  cornerOf(column: number): number {
    return Math.floor(column / (this.#leans.length + 1));
  }

  lengthOf(column: number): number {
    return this.#length(this.cornerOf(column), this.#leanOf(column));
  }

  /** The pull that lessens the residual fastest, for its length; null when the cosine of none exceeds `enough`. */
  bestPull(residual: Float64Array, enough: number, isOut: IsOut): number | null {
    let best: number | null = null;
    let most = enough;
    this.#corners.forEach(({ pull }, corner) => {
      const gain = this.#along(corner, residual, pull) / this.#length(corner, pull);
      const column = this.#named(corner, this.#leans.length);
      if (gain <= most || isOut(column)) return;
      most = gain;
      best = column;
    });
    return best;
  }

  /** The same for the edges of the cones. */
  bestEdge(residual: Float64Array, enough: number, isOut: IsOut): number | null {
    let best: number | null = null;
    let most = enough;
    const edges = this.#leans.length;
    this.#corners.forEach((_, corner) => {
      const first = columnDot(this.#frames, 3 * corner + 1, residual);
      const second = columnDot(this.#frames, 3 * corner + 2, residual);
      const right = Math.round((Math.atan2(second, first) / (2 * Math.PI)) * edges) + edges;
      for (const beside of BESIDE) {
        const column = this.#named(corner, (right + beside) % edges);
        const lean = this.#leanOf(column);
        const gain = this.#along(corner, residual, lean) / this.#length(corner, lean);
        if (gain <= most || isOut(column)) continue;
        most = gain;
        best = column;
      }
    });
    return best;
  }

  /** Adds `share` times a column to a vector. */
  addTo(vector: Float64Array, column: number, share: number): void {
    const at = this.cornerOf(column);
    const [x, y] = this.#leanOf(column);
    addColumn(vector, this.#frames, 3 * at, share);
    addColumn(vector, this.#frames, 3 * at + 1, share * x);
    addColumn(vector, this.#frames, 3 * at + 2, share * y);
  }

  #named(corner: number, k: number): number {
    return corner * (this.#leans.length + 1) + k;
  }

  /** What a column has along the two directions of its surface. */
  #leanOf(column: number): Vec2 {
    const at = this.cornerOf(column);
    const { friction, pull } = this.#corners[at] ?? NO_CORNER;
    const lean = this.#leans[column - this.#named(at, 0)];
    return lean === undefined ? pull : scale2(lean, friction);
  }

  /** Product of a column with the residual. */
  #along(corner: number, residual: Float64Array, [x, y]: Vec2): number {
    const straight = columnDot(this.#frames, 3 * corner, residual);
    if (x === 0 && y === 0) return straight;
    const first = columnDot(this.#frames, 3 * corner + 1, residual);
    return straight + x * first + y * columnDot(this.#frames, 3 * corner + 2, residual);
  }

  /** Length of a column. */
  #length(corner: number, [x, y]: Vec2): number {
    const p = this.#products;
    const at = 6 * corner;
    const straight = (p[at] ?? 0) + 2 * (x * (p[at + 1] ?? 0) + y * (p[at + 2] ?? 0));
    return Math.sqrt(straight + x * x * (p[at + 3] ?? 0) + 2 * x * y * (p[at + 4] ?? 0) + y * y * (p[at + 5] ?? 0));
  }
}

const NO_CORNER: Corner = { friction: 0, pull: [0, 0] };

function productsOf(frames: SparseColumns, corners: number): Float64Array {
  const products = new Float64Array(6 * corners);
  const column = new Float64Array(frames.rows);
  for (let corner = 0, k = 0; corner < corners; corner += 1) {
    for (let i = 0; i < 3; i += 1) {
      column.fill(0);
      addColumn(column, frames, 3 * corner + i, 1);
      for (let j = i; j < 3; j += 1, k += 1) products[k] = columnDot(frames, 3 * corner + j, column);
    }
  }
  return products;
}
