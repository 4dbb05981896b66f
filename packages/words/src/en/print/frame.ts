// English texts at the foot of every printed sheet.

export const frame = {
  'print.page': 'Page {page} of {pages}',
  'print.bar-mm': '100 mm',
  'print.bar-inch': '2 in',
  'print.scale': 'Print at 100 %, then measure these bars.',
} as const;
