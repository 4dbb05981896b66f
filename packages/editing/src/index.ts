// Commands that change a layout: (pieces, command, bench) -> pieces, with undo and redo. No screen, no drawing.

export * from './types.ts';
