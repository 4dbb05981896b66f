// Binary glTF, read by its specification and refused where it is not kept: the glTF 2.0 specification of the Khronos Group, by
// section. Only what stands in files of ours is read: nodes with a matrix, triangles without indices, one buffer.

import type { Vec3 } from '@cairnmark/geometry';
import type { Triangle } from '../mesh-integrals.ts';

export interface Glb {
  readonly json: GltfJson;
  /** The nodes of the scene in their order: in the frame of the file, metres. */
  readonly parts: readonly {
    readonly name: string;
    readonly colour: readonly number[];
    readonly triangles: readonly Triangle[];
  }[];
}

interface GltfJson {
  readonly asset: { readonly version: string };
  readonly scene: number;
  readonly scenes: readonly { readonly name: string; readonly nodes: readonly number[] }[];
  readonly nodes: readonly { readonly name: string; readonly mesh: number; readonly matrix?: readonly number[] }[];
  readonly meshes: readonly { readonly primitives: readonly Primitive[] }[];
  readonly materials: readonly { readonly pbrMetallicRoughness: { readonly baseColorFactor: readonly number[] } }[];
  readonly accessors: readonly Accessor[];
  readonly bufferViews: readonly {
    readonly byteOffset: number;
    readonly byteLength: number;
    readonly byteStride: number;
  }[];
  readonly buffers: readonly { readonly byteLength: number }[];
  readonly extensionsUsed?: readonly string[];
}

interface Primitive {
  readonly attributes: Readonly<Record<'POSITION' | 'NORMAL', number>>;
  readonly indices?: number;
  readonly material: number;
  readonly mode: number;
}

interface Accessor {
  readonly bufferView: number;
  readonly byteOffset?: number;
  readonly componentType: number;
  readonly count: number;
  readonly type: string;
  readonly min: readonly number[];
  readonly max: readonly number[];
}

const [MAGIC, JSON_CHUNK, BIN_CHUNK] = [0x46546c67, 0x4e4f534a, 0x004e4942];
const [FLOAT, TRIANGLES] = [5126, 4];

export function readGlb(bytes: Uint8Array): Glb {
  const { json, binary } = chunksOf(bytes);
  check(json.asset.version === '2.0', '3.2 the version of the asset');
  check(json.buffers.length === 1 && json.buffers[0]!.byteLength <= binary.byteLength, '3.6.1.2 one buffer, as stored');
  check((json.extensionsUsed ?? []).length === 0, 'no extension is used');
  const parts = json.scenes[json.scene]!.nodes.map((index) => {
    const { name, mesh, matrix = IDENTITY } = json.nodes[index]!;
    const [primitive] = json.meshes[mesh]!.primitives;
    check(primitive?.mode === TRIANGLES && primitive.indices === undefined, '3.7.2.1 triangles without indices');
    const { attributes, material } = primitive!;
    const corners = vectorsOf(json, binary, attributes.POSITION);
    checkNormals(corners, vectorsOf(json, binary, attributes.NORMAL));
    const placed = corners.map((corner) => put(matrix, corner));
    const triangles = Array.from({ length: placed.length / 3 }, (_, k): Triangle => {
      return [placed[3 * k]!, placed[3 * k + 1]!, placed[3 * k + 2]!];
    });
    return { name, triangles, colour: json.materials[material]!.pbrMetallicRoughness.baseColorFactor };
  });
  return { json, parts };
}

/** 4.4 Binary glTF Layout: a header and two chunks, little endian, padded to four bytes. */
function chunksOf(bytes: Uint8Array): { readonly json: GltfJson; readonly binary: DataView } {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const word = (at: number): number => view.getUint32(at, true);
  check(word(0) === MAGIC && word(4) === 2 && word(8) === bytes.byteLength, '4.4.2 magic, version 2, whole length');
  const jsonLength = word(12);
  const second = 20 + jsonLength;
  check(word(16) === JSON_CHUNK && word(second + 4) === BIN_CHUNK, '4.4.3 the chunks in their order');
  check(jsonLength % 4 === 0 && word(second) % 4 === 0, '4.4.3 chunks end on four bytes');
  check(second + 8 + word(second) === bytes.byteLength, '4.4.3 nothing follows');
  const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes.subarray(20, second));
  check(/\} *$/.test(text), '4.4.3.2 padded with spaces');
  return { json: JSON.parse(text), binary: new DataView(view.buffer, view.byteOffset + second + 8, word(second)) };
}

/** 3.6.2 Accessors: three floats each, aligned, inside their view, and with the bounds that are written. */
function vectorsOf(json: GltfJson, binary: DataView, index: number): readonly Vec3[] {
  const { bufferView, byteOffset = 0, componentType, count, type, min, max } = json.accessors[index]!;
  const { byteOffset: start, byteLength, byteStride } = json.bufferViews[bufferView]!;
  check(componentType === FLOAT && type === 'VEC3', '3.7.2.1 three floats');
  check((start + byteOffset) % 4 === 0 && byteStride % 4 === 0, '3.6.2.4 aligned');
  check(byteOffset + byteStride * (count - 1) + 12 <= byteLength, '3.6.2.4 inside the view');
  check(start + byteLength <= binary.byteLength, '3.6.1.1 inside the buffer');
  const found = Array.from({ length: count }, (_, k): Vec3 => {
    const at = (i: number): number => binary.getFloat32(start + byteOffset + byteStride * k + 4 * i, true);
    return [at(0), at(1), at(2)];
  });
  for (const axis of [0, 1, 2] as const) {
    const [least, most] = [Math.fround(min[axis]!), Math.fround(max[axis]!)];
    const beyond = found.filter((point) => point[axis] < least || point[axis] > most);
    const reached = [least, most].every((bound) => found.some((point) => point[axis] === bound));
    check(beyond.length === 0 && reached, '3.6.2.5 the bounds are those of the values');
  }
  return found;
}

/** Of unit length, and to the side from which their triangle is seen counter-clockwise (3.7.4), as smooth as they may be. */
function checkNormals(corners: readonly Vec3[], normals: readonly Vec3[]): void {
  check(corners.length === normals.length, '3.7.2.1 as many normals as corners');
  normals.forEach(([x, y, z], k) => {
    const [a, b, c] = [0, 1, 2].map((i) => corners[3 * Math.floor(k / 3) + i]!) as [Vec3, Vec3, Vec3];
    const [u, v] = [minus(b, a), minus(c, a)];
    const facet: Vec3 = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
    check(Math.abs(Math.hypot(x, y, z) - 1) < 1e-4, '3.7.2.1 normals of unit length');
    check(x * facet[0] + y * facet[1] + z * facet[2] > 0.8 * Math.hypot(...facet), '3.7.4 normals to the front');
  });
}

const minus = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];

/** 3.5.3 Transformations: matrices stand column by column. */
const put = (m: readonly number[], [x, y, z]: Vec3): Vec3 => [
  m[0]! * x + m[4]! * y + m[8]! * z + m[12]!,
  m[1]! * x + m[5]! * y + m[9]! * z + m[13]!,
  m[2]! * x + m[6]! * y + m[10]! * z + m[14]!,
];

const IDENTITY: readonly number[] = [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1];

function check(kept: boolean, what: string): void {
  if (!kept) throw new Error(`glTF 2.0, ${what}`);
}
