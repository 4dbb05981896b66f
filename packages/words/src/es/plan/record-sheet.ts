// Spanish texts of the Record sheet.

export const recordSheet = {
  'record-sheet.title': 'Hoja de registro',
} as const;
