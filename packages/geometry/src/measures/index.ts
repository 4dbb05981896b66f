// Facts of a build: what is measured, how, and how far off it may be.

export type { Beside } from './beside.ts';
export { besideEachOther, reachAlong } from './beside.ts';
export type { MeasureIssue, PieceKinds } from './build.ts';
export { MEASURES } from './catalogue.ts';
export { leastWidthMm } from './least-width.ts';
export type { MeasureDefinition } from './measure.ts';
export { measureBuild } from './measure-build.ts';
export type { SchoolCounts } from './school-counts.ts';
export { schoolCounts } from './school-counts.ts';
export * from './types.ts';
