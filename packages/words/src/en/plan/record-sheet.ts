// English texts of the Record sheet.

export const recordSheet = {
  'record-sheet.title': 'Record sheet',
} as const;
