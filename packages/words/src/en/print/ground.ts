// English texts of the ground sheet, by which photographs are measured.

export const ground = {
  'print.ground-title': 'Ground sheet for photos',
  'print.ground-how': 'Print at 100 %. Build in the middle, and leave all eight squares uncovered.',
  'print.ground-lay': 'Print at 100 %. Lay the four pages edge to edge, and build where they meet.',
  'print.ground-from': 'from this mark',
  'print.ground-to': 'to this mark: 100 mm',
  'print.ground-place-1': 'upper left',
  'print.ground-place-2': 'upper right',
  'print.ground-place-3': 'lower left',
  'print.ground-place-4': 'lower right',
} as const;
