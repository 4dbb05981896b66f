// From a solid to a net of paper, true to size: pieces to cut out, folds, tabs, and whether they fit a page. mm.

export { checkFit } from './fit/check-fit.ts';
export type { Placing } from './fit/fits.ts';
export { fits, netFits } from './fit/fits.ts';
export type { Frame } from './fit/frame.ts';
export type { Largest } from './fit/largest.ts';
export { largestThatFits } from './fit/largest.ts';
export { splitNet } from './fit/split.ts';
export type { Gores } from './gores.ts';
export { makeGores } from './gores.ts';
export { makeNet } from './make-net.ts';
export * from './net.ts';
export { circlePath } from './path/arc.ts';
export { flattenPath, pathAreaMm2 } from './path/measure.ts';
export * from './path/path.ts';
export type { Turned } from './plane/place-on.ts';
export { placeOn } from './plane/place-on.ts';
export type { Room } from './plane/room.ts';
export { rememberedTabPaper, tabPaper } from './tab-paper.ts';
export type { TabMass } from './tabs-of.ts';
export { tabMassOf, tabsOf } from './tabs-of.ts';
export { DEEP_TAB_DEPTH_MM, FLATTEN_MM, USUAL_TAB_DEPTH_MM } from './tolerance.ts';
export type { Placed } from './unfold/faces.ts';
