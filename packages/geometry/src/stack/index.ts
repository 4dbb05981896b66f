// From a layout to a stack: pieces dropped onto each other, what rests on what, and which faces touch.

export { bodyBox } from './body-box.ts';
export { buildStack } from './build-stack.ts';
export { FURTHEST_MM, MOST_PIECES } from './check-layout.ts';
export type { Drop } from './drop-height.ts';
export { dropHeight } from './drop-height.ts';
export { faceContacts } from './face-contacts.ts';
export { planOverlapDepth } from './plan-overlap.ts';
export * from './types.ts';
