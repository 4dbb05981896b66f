// Commands that change a layout: (pieces, command, bench) -> pieces, with undo and redo. No screen, no drawing.

export type { Drag, Ghost } from './drag.ts';
export { dragOf, settle } from './drag.ts';
export { edit } from './edit.ts';
export { degreesOf } from './grid.ts';
export type { History } from './history.ts';
export { begin, canRedo, canUndo, did, redo, replace, undo } from './history.ts';
export { hoverAt } from './hover.ts';
export { GRID_MM, LINE_UP_MM } from './line-up.ts';
export type { Reading } from './read-back.ts';
export { offsetFrom, readBack } from './read-back.ts';
export { restingsOf } from './restings.ts';
export { stockLeft } from './stock.ts';
export * from './types.ts';
