// Measuring from photographs: the sheet that they are measured by.

export * from './ground-sheet.ts';
