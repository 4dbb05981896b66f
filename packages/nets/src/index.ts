// Nets of solids, as lines in mm.

export type { Path, PathStep } from './path.ts';
