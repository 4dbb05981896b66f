// The camera of a truth file, written apart from the package: a second hand for what is tapped and for what comes out. Formula as
// stated in the file: u = c + f x (1 + k1 r^2).

export type Point2 = readonly [number, number];
export type Point3 = readonly [number, number, number];

export interface TrueCamera {
  readonly f: number;
  readonly cx: number;
  readonly cy: number;
  readonly k1: number;
  /** Row by row, world to camera: x right, y down, z forward. */
  readonly R: readonly number[];
  readonly t: readonly number[];
}

export function project({ f, cx, cy, k1, R, t }: TrueCamera, point: Point3): Point2 {
  const [x, y, z] = [0, 1, 2].map(
    (row) => t[row]! + [0, 1, 2].reduce((sum, k) => sum + R[3 * row + k]! * point[k]!, 0),
  );
  const [a, b] = [x! / z!, y! / z!];
  const far = 1 + k1 * (a * a + b * b);
  return [cx + f * a * far, cy + f * b * far];
}

/** Where the lens is. */
export const lensOf = ({ R, t }: TrueCamera): Point3 => {
  const [x, y, z] = [0, 1, 2].map((k) => -[0, 1, 2].reduce((sum, row) => sum + R[3 * row + k]! * t[row]!, 0));
  return [x!, y!, z!];
};

/** rad off straight down. */
export const trueTilt = ({ R }: TrueCamera): number => Math.acos(-R[8]!);
