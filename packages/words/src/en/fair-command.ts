// English texts of the commands about the points lab: favour and even.

export const fairCommand = {
  'help.favour': `cairnmark favour [FILE] [--solid NAME] [--lead N] [--most N] [--rules N] [--negative] [--half]
                 [--count LIST] [--counting A|B|C] [--challenge ID] [--as table|json] [--lang en|es]

Shows what one piece of each solid earns under the points of a challenge, and finds the smallest points that
favour a solid, or says why there are none, with a proof to add up. FILE is a class, a challenge or a kit;
without a file it is the demo class.

  --solid NAME     the solid to favour, by its name in the kit; without it each of them is tried
  --lead N         how many points more than every other it must earn at least; 1 unless stated
  --most N         no row gives or takes more than this for each; 10 unless stated
  --rules N        how many different rules are told at most; 3 unless stated
  --negative       rows may also take points
  --half           half points are allowed
  --count LIST     what may count, such as faces,edges,height; unless stated what is counted on a piece.
                   See the heads of the table of --as json for all of them
  --counting A     how faces, edges and corners are counted: A flat solids only, B curved surfaces apart,
                   C every surface a face and every rim an edge; unless stated as the challenge says
  --challenge ID   the challenge, by its name or id; the first unless stated
  --as json        all of it as data, proofs too
`,
  'help.even': `cairnmark even [FILE] [--most N] [--negative] [--half] [--count LIST] [--counting A|B|C]
               [--challenge ID] [--as table|json] [--lang en|es]

Finds the fairest points: those with which the lowest earns as large a share of the highest as can be, and
says whether all could ever earn alike. FILE and the options are as for favour.
`,
  'usage.solid-unknown': 'There is no solid "{name}" in this kit. Use one of: {known}.',
  'usage.points-value': 'The value of "{name}" cannot be {value}. Use a number from {step} to {most}.',
  'usage.count-unknown': '"{name}" is nothing that a piece has. Use some of: {known}.',
  'usage.counting-unknown': 'There is no way of counting "{value}". Use A, B or C.',
  'usage.few-kinds': 'This kit has fewer than two kinds of pieces: there is nothing to compare.',
} as const;
