// From a layout to a stack: pieces dropped onto each other, what rests on what, and which faces touch.

export { bodyBox } from './body-box.ts';
export type { DroppedPieces } from './build-stack.ts';
export { buildStack, dropPieces } from './build-stack.ts';
export type { KnownPiece } from './check-layout.ts';
export { checkLayout, FURTHEST_MM, MOST_PIECES } from './check-layout.ts';
export type { Drop } from './drop-height.ts';
export { dropHeight } from './drop-height.ts';
export { faceContacts } from './face-contacts.ts';
export type { Clash, Landing } from './landing.ts';
export { landOn, standAmong } from './landing.ts';
export { placePiece } from './place.ts';
export { meetInPlan } from './plan-grid.ts';
export { planOverlapDepth } from './plan-overlap.ts';
export * from './types.ts';
