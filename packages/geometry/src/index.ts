// Numbers about solids: sizes in, measures out. Millimetres and radians; frames in CONVENTIONS.md.

export type { Box3 } from './kernel/box.ts';
export * from './kernel/formula.ts';
export { convexHull } from './kernel/hull.ts';
export * from './kernel/outline.ts';
export { signedAreaMm2 } from './kernel/polygon.ts';
export * from './kernel/result.ts';
export * from './kernel/rotation.ts';
export * from './kernel/tolerance.ts';
export * from './kernel/units.ts';
export * from './kernel/vec.ts';
export * from './measures/index.ts';
export * from './mesh/mesh.ts';
export * from './mesh/silhouette.ts';
export * from './outline/index.ts';
export * from './solids/body.ts';
export * from './solids/catalogue.ts';
export { FEWEST_SIDES, LARGEST_SIZE_MM, MOST_SIDES, SMALLEST_SIZE_MM } from './solids/sizes.ts';
export * from './solids/types.ts';
export * from './stability/index.ts';
export * from './stack/index.ts';
