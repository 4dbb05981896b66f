// English texts of the measuring tables and the answer key.

export const measuring = {
  'print.measure-how': 'Measure the net before you fold it. Count on the folded solid. Write – where there is none.',
  'print.measure-ruler': 'Our ruler reads {ruler}.',
  'print.measure-solid': 'Solid',
  'print.measure-longest-edge': 'longest edge',
  'print.measure-surface': 'surface',
  'print.own-how': 'Make solids of your own. Sketch each one and give it a name. Then measure it and count.',
  'print.own-sketch': 'Name and sketch',
  'print.own-sizes': 'Sizes, {unit}',
  'print.key-lengths': 'Lengths stand here as the ruler of the class reads them.',
  'print.key-pi': 'Surface and volume are worked out with {pi}.',
  'print.key-agrees': 'A result agrees when it is off by no more than what stands behind the ±.',
  'print.key-own': 'A group that has measured its own pieces finds its own results on the Score card.',
  'print.key-none': '–',
} as const;
