// From a solid to a net of paper, true to size: pieces to cut out, folds, tabs, and whether they fit a page. mm.

export { makeNet } from './make-net.ts';
export * from './net.ts';
export { circlePath } from './path/arc.ts';
export { flattenPath, pathAreaMm2 } from './path/measure.ts';
export * from './path/path.ts';
