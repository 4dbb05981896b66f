// English texts on pages of nets, and of nets that are not on them.

export const nets = {
  'print.nets': 'Nets',
  'print.sheets': 'Sheets',
  'print.net-once': 'Nets: {kind} (this page once)',
  'print.net-copies': 'Nets: {kind} (this page {copies} times)',
  'print.net-base': '{kind}: base',
  'print.net-top': '{kind}: top',
  'print.net-part': '{kind}\npart {part} of {parts}',
  'print.net-cut': 'cut',
  'print.net-fold': 'fold, with the print inside',
  'print.net-tab': 'tab: put glue on its blank side',
  'print.net-letters': 'Glue tab A on edge A, its blank side down.',
  'print.net-tape': 'Small tabs: use tape.',
  'print.net-caution': 'Scissors: adults cut for young pupils. Carry them closed, point down.',
  'print.gores': 'Paper ball: {kind}',
  'print.gores-how':
    'Cut out the {count} strips. Draw each one over the edge of a table, so that it bends along its length. Tape the strips side by side, edge to edge: first the middles, then towards the tips. This takes long, and along the seams the ball is a little too thick: a bought ball is rounder.',
  // Nets that are not on the pages.
  'print.no-net': '{kind} has no net: flat paper does not bend to a ball. Use a bought one.',
  'print.net-too-large':
    '{kind} is too large for {paper}. In this shape, its {size} can be {most} at most. Or let it be printed in {parts} parts.',
  'print.face-too-large':
    '{kind} is too large for {paper}, and no way to part it helps. In this shape, its {size} can be {most} at most.',
} as const;
