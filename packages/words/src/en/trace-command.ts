// English texts of the command that traces.

export const traceCommand = {
  'help.trace': `cairnmark trace TOP.jpg [SIDE.jpg] --taps FILE [--as table|json|csv] [--lang en|es]

Measures a build from two photos on the ground sheet: TOP.jpg from above for the places, SIDE.jpg for the
height. FILE says which sheet it is, which pieces there are from the table up, and where they were tapped.
It is JSON with these keys; pixels are counted from the upper left corner of the photo:

  sheet      "ground", "forts" (the one of four pages) or "plain"
  paper      "a4" or "letter"
  focal35Mm  where it is known: the focal length as on 35 mm film
  pieces     a list; of each piece its kind (a name), its solid as in a kit file, resting (the side it
             lies on, as "base") and taps, as [[880.9, 560.8], [810.3, 746.5]]: two corners far from each
             other, of the top face of a prism or the base of a pyramid; three places round the rim of
             what is round
  top        taps on the highest piece in the photo of the side: its tip, or the two ends of a flat top

  --taps FILE  that file
  --as json    the build as a layout, and the height, as data: mm, rad
`,
  'usage.trace-photos': 'Name a photo from above, and one from the side if there is one. See: {help}',
  'usage.trace-taps': 'Which taps? Write --taps and a file. See: {help}',
  'trace.no-json': 'This is no JSON. Write it as the help shows: {help}',
  'trace.bad': '{place}: This is missing, or not as it should be. See: {help}',
  'trace.no-jpeg': 'This is no JPEG photo. Save it as one, then try again.',
  'trace.seen': 'Squares found: {found} of {most}. Tilt {tilt}.',
  'trace.seen-plain': 'The edges of the sheet are found. Tilt {tilt}.',
  'trace.head-piece': 'piece',
  'trace.head-bottom': 'stands at',
  'trace.head-x': 'right',
  'trace.head-y': 'back',
  'trace.head-turn': 'turned',
  'trace.stacked': 'The pieces add up to {height}.',
  'trace.height': 'By the photo of the side it is {height} high, ± {error}.',
} as const;
