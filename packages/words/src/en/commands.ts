// English texts of the terminal: help, headings, and what is wrong with a call or a file.

import { bestCommand } from './best-command.ts';
import { fairCommand } from './fair-command.ts';
import { printCommand } from './print-command.ts';
import { traceCommand } from './trace-command.ts';

export const commands = {
  ...fairCommand,
  ...bestCommand,
  ...printCommand,
  ...traceCommand,
  help: `Cairnmark measures, scores and ranks builds of stacked solids.

  cairnmark score [FILE...]               rank the groups of a class; without a file, the demo class
  cairnmark measure [FILE...]             all facts of one build, each with its working
  cairnmark why [FILE...] GROUP [OTHER]   what separates two groups, or two tries of one group
  cairnmark ready [ID] [FILE...]          challenges ready to run; with an ID, a class's builds under it
  cairnmark favour [FILE]                 what the points favour, and points that favour a solid
  cairnmark even [FILE]                   points that are as fair as can be
  cairnmark best [FILE...]                the best build that the pieces allow
  cairnmark print [FILE] -o OUT.pdf       nets and sheets for the lesson, as a PDF
  cairnmark trace TOP.jpg [SIDE.jpg]      a build measured from photos, by a file of taps
  cairnmark solids                        the solids, their sizes and how they rest
  cairnmark check FILE...                 say what is wrong with a file
  cairnmark help [COMMAND]                this text, or more about one command

Options of every command:
  --lang en|es                            language of the answer

In the folder of Cairnmark, type npm run cairnmark -- for cairnmark: npm run cairnmark -- measure --lang es

Lists are counted from 1. The command ends with 0 when all is well, with 1 when a file has a fault,
with 2 when the command was not understood.
`,
  'help.cautions': 'Cautions',
  'help.score': `cairnmark score [FILE...] [--rows] [--as table|json|csv] [--lang en|es]

Ranks the groups, challenge by challenge, and adds up the day. FILE is a class file; or name one
challenge file and the attempt files that belong to it. Without a file the demo class is scored.

  --rows       also show the points of every build, row by row, the groups' own results and their supply
  --as table   for people (this is the usual way)
  --as json    everything the engine found, as data: mm, mm², mm³
  --as csv     one line a build, for a spreadsheet: a comma between cells, a point in numbers; an empty
               cell was not measured, which is not 0
`,
  'help.measure': `cairnmark measure [FILE...] [--attempt ID] [--without N|all] [--tilt SIDE] [--lang en|es]

Shows all facts of one build with their workings, and whether it stands. FILE is a class file; or name a
challenge file and an attempt file; or none for the demo class. With more than one attempt, say which by
its id; without an id, the command lists them.

  --attempt ID   the build to show
  --without N    also say what happens when piece N is taken out, counted from 1 as the build was put
                 together; --without all says it for every piece
  --tilt SIDE    also say how far the table can be tilted down to one side: left, right, front, back, or
                 degrees from 0 to 360, counted counter-clockwise from the right as seen from above
`,
  'help.why': `cairnmark why [FILE...] GROUP [OTHER] [--challenge ID] [--lang en|es]

With two groups: says line by line what separates their builds, who is ahead and by what, challenge by
challenge. With one group: says what changed between its last two tries. Groups go by name or id. FILE is
as for score; its name ends in .json. Without a file it is about the demo class.

  --challenge ID   only this challenge, by its name or id
`,
  'help.ready': `cairnmark ready [ID] [FILE...] [--pieces N] [--rows] [--lang en|es]

Without an ID: lists the challenges that are ready to run, with any kit. With an ID: scores every drawn build
of a class as if it had been built for that challenge; the best build of each group counts. FILE is as for
score; its name ends in .json. Without a file the builds are those of the demo class.

  --pieces N   the number of pieces that the challenge asks for, where it asks for one; 5 unless stated
  --rows       also show the points of every build, row by row
`,
  'help.solids': `cairnmark solids [--lang en|es]

Lists the solids that a kit can hold: the sizes each one asks for, other measurements that are taken
instead, how many faces, edges and vertices it has, and the sides it can rest on.
`,
  'help.check': `cairnmark check FILE... [--lang en|es]

Reads each file and says what is wrong with it, place by place, or that it is fine.
`,
  // What is wrong with a call.
  'usage.command-unknown': 'There is no command "{name}". Use one of: {known}.',
  'usage.option-unknown': 'There is no option "{name}" here. See: {help}',
  'usage.option-alone': 'The option "{name}" needs a value after it. See: {help}',
  'usage.option-value': 'The option "{name}" cannot be "{value}". Use one of: {known}.',
  'usage.option-no-value': 'The option "{name}" takes no value. See: {help}',
  'usage.piece-unknown': 'There is no piece "{piece}" in this build. Use a number from 1 to {count}, or all.',
  'usage.side-unknown': 'There is no side "{side}". Use left, right, front, back, or degrees such as 30.',
  'usage.group-unknown': 'There is no group "{name}". Use one of: {known}.',
  'usage.group-which': 'Name one group or two. See: {help}',
  'usage.challenge-unknown': 'There is no challenge "{name}". Use one of: {known}.',
  'usage.ready-unknown': 'There is no ready challenge "{name}". Use one of: {known}.',
  'usage.pieces-unknown': 'The number of pieces cannot be "{pieces}". Use a whole number from 1 on, such as 5.',
  'usage.no-file': 'Which file? See: {help}',
  'usage.no-files-here': 'This command reads no file. See: {help}',
  // What is wrong with a file, before it is read.
  'file.line': '{file}: {sentence}',
  'file.missing': 'There is no such file. Check the name.',
  'file.folder': 'This is a folder. Name a file in it.',
  'file.closed': 'This file cannot be opened. Check who may read it.',
  'file.too-large': 'This file is too large. At most {most} MB are read. Split it into smaller files.',
  'file.not-utf8': 'This is no text in UTF-8. Choose another file, or save it again as UTF-8.',
  'file.empty': 'This file is empty. Choose another file.',
  'file.fine': '{file}: fine ({format}).',
  'file.beyond-the-kit': '{file}: the build {attempt} will take no place. {sentence}',
  // Files that do not go together.
  'files.nothing-to-score':
    'This file ({format}) cannot be scored alone. Name a class file, or a challenge file with its attempts.',
  'files.no-challenge': 'No challenge stands beside these attempts. Name its file too.',
  'files.two-challenges': 'This is a second challenge. Name one challenge file at a time.',
  'files.two-classes': 'This is a second class. Name one class file at a time.',
  'files.class-and-others': 'A class file holds all of it. Name it alone.',
  'files.no-attempt': 'There is no attempt in these files. Add an attempt file.',
  'files.attempt-unknown': 'There is no attempt "{id}". Use one of:\n{known}',
  'files.attempt-which': 'There are several attempts. Say which with --attempt and its id:\n{known}',
  // Scores.
  'score.invented': 'All data of this class is invented.',
  'score.order': 'Ranking: {order}.',
  'score.not-ranked': 'Not ranked',
  'score.decisions': 'Decided by people',
  'score.rows': 'Points, row by row',
  'score.own': 'Own results of the groups',
  'score.supply': 'Supply',
  'score.warnings': 'Look at this before you trust the places',
  'score.day': 'Whole day',
  'score.total': 'Total: {total}',
  'score.none': 'not measured',
  'score.best-of': 'best of {count} attempts',
  'score.last-of': 'last of {count} attempts',
  'score.chosen-of': 'chosen of {count} attempts',
  'score.another-counts': 'Another attempt of the group counts.',
  'score.no-result': 'no result',
  'score.not-played': 'not played yet',
  'score.not-known': 'not known',
  'score.points-not-known': 'points not known: {measures} not measured',
  // Workings.
  'working.letters': `Letters: A area from above, V volume, S all surfaces, U surface you can touch, B base, L the sides without the bases, P perimeter (of a solid: of its base), l length, w width,
h height, k one number divided by another, s slant height, a and b edges, r radius (of a pyramid: from the middle of the base to its side),
R radius of the base under a smaller top, d how far the top stands in, q half of P, n how many, t 180° / n.`,
  'working.count-letters': 'In counts: N pieces, F faces, R curved ones, E edges, C corners.',
  'working.digits':
    'Workings go on with the full numbers. With the digits shown, the last one can come out a little different.',
  // Measures.
  'measure.title': '{group}, {challenge} ({attempt})',
  'measure.own': 'Own results of the group',
  'measure.supply': 'Supply of the group',
  'measure.hidden': 'Not shown to this class: {measures}.',
  'measure.rules': 'Rules',
  'measure.stock': 'More than the kit has',
  'measure.source': '{value} ({source})',
  'measure.base': 'On the table means: {base}.',
  'measure.counting': 'How things are counted: {counting}.',
  'measure.touching': 'Surfaces less than {contact} apart count as touching.',
  'measure.gap-allowance': 'From above, gaps up to {gap} count as closed.',
  'measure.no-gaps': 'No gap was closed.',
  'measure.stands': 'Does it stand?',
  'measure.stands-limits': 'What this answer rests on',
  'measure.not-judged': 'Not judged: no drawing of this build.',
  'measure.no-drawing':
    'There is no drawing of this build: no piece can be taken out and nothing tilted. Leave out --without and --tilt.',
  'measure.without': 'With a piece taken out',
  'measure.tilt': 'Tilted to one side',
  // What separates two builds.
  'why.title': '{first} and {second}',
  'why.tries': 'What changed: {group}',
  'why.try': 'try {number}',
  'why.changes': 'What changed',
  'why.points': 'What separates the two tries',
  'why.nothing-in-common': '{first} and {second} have no challenge in which both have a build.',
  'why.one-try':
    'There is no challenge at which {group} tried twice or more. To see what separates it from another group, name that group too.',
  // Ready challenges.
  'ready.title': '{name}: {id}',
  'ready.grades': 'For {grades}.',
  'ready.labels': 'Standards: {labels}.',
  'ready.rules': 'Rules: {rules}.',
  'ready.points': 'Points: {rows}.',
  'ready.no-kit': 'This class has no challenge, so there is no kit.',
  'ready.left-out.one': '1 build was left out: it has no drawing, or another kit.',
  'ready.left-out': '{count} builds were left out: they have no drawing, or another kit.',
  // Solids.
  'solids.sizes': 'Sizes: {sizes}.',
  'solids.or': '{size} or {other}',
  'solids.whole': '{size}, a whole number',
  'solids.example': 'With {sizes}:',
  'solids.counts': '{counts}.',
  'solids.rests': 'Rests on:',
  'solids.resting': '{name}: {contact}, {height} high',
  // Columns.
  'column.place': 'Place',
  'column.group': 'Group',
  'column.notes': 'Notes',
  'column.challenge': 'Challenge',
  'column.attempt': 'Attempt',
  'column.why': 'Why not ranked',
  'column.total': 'Total',
  'column.results': 'Results',
  'column.stands': 'Does it stand?',
  'column.own': 'Points for own results',
} as const;
