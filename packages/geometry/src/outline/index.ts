// Outlines seen from above: area, perimeter, parts and holes of their union, overlaps, hulls, and unions for drawing.

export { outlineAreaMm2 } from './area.ts';
export type { BoundaryArc, BoundaryLine, BoundaryMouth, BoundaryPart } from './boundary.ts';
export type { GapPolicy } from './counted-union.ts';
export type { DrawnPart, DrawnUnionIssue } from './drawn-union.ts';
export { drawnUnion } from './drawn-union.ts';
export type { ClosedGap } from './gaps.ts';
export type { HullFacts } from './hull.ts';
export { hullOf } from './hull.ts';
export { overlapAreaMm2 } from './overlap.ts';
export type { UnionFacts } from './union-facts.ts';
export { unionFacts } from './union-facts.ts';
export type { UnionLoop } from './union-loops.ts';
export { unionLoops } from './union-loops.ts';
