// English texts of the ground sheet, by which photographs are measured.

export const ground = {
  'print.ground-one-page': 'Ground sheet for photos of towers',
  'print.ground-four-pages': 'Ground sheet for photos of forts',
  'print.ground-how': 'Print at 100 %. Build in the middle, and leave all eight squares uncovered.',
  'print.ground-lay': 'Print at 100 %. Tape the four pages edge to edge.',
  'print.ground-cover': 'Build where the pages meet. Only squares under the build may be covered.',
  'print.ground-from': 'from this mark',
  'print.ground-to': 'to this mark: 100 mm',
  'print.ground-place-1': 'upper left',
  'print.ground-place-2': 'upper right',
  'print.ground-place-3': 'lower left',
  'print.ground-place-4': 'lower right',
} as const;
