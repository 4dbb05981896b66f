// English texts of the command that prints.

export const printCommand = {
  'help.print': `cairnmark print [FILE] -o OUT.pdf [--what nets|sheets|ground|gores] [--paper a4|letter]
                [--challenge ID] [--lang en|es]

Writes what a lesson has on paper as a PDF. FILE is a class file, a challenge file or a kit file; without a
file it is about the demo class. When there is an OUT.pdf already, the new one takes its place once it is
whole; if something goes wrong, the old one stays.

  --what nets      nets of the pieces of paper, true to size (this is the usual way); with it:
    --sets N         so many nets of each kind; 1 unless stated
    --masters        pages of one kind each, filled with copies of it, to photocopy
    --split          a net that is too large for the paper is parted at folds
    --svg FOLDER     also a drawing of each net (SVG), for machines that cut; then -o can be left out
  --what sheets    the sheets for a challenge, one copy of each; with it:
    --sheet ID       only this one: lesson-plan, materials, measure-young, measure-older, measure-own,
                     answer-key, rules, roles, game, record, record-pieces, rubric, results,
                     riddle, riddle-key, reflection
    --large-print    larger writing on more pages, for those who need it
    --pupils N       pupils in the class, by which copies are counted; 5 a group unless stated
  --what ground    the ground sheet by which photos are measured; with it:
    --forts          the one of four pages, for forts
  --what gores     strips for paper balls, for the teacher
  --paper a4       or letter; without it A4, and Letter for a class that measures in inches
  --challenge ID   whose kit and rules, by its name or id; the first of the class unless stated
`,
  'usage.out-which': 'Where to? Write -o and a name that ends in .pdf. See: {help}',
  'usage.out-no-pdf': 'The PDF cannot be called "{name}". Choose a name that ends in .pdf.',
  'usage.one-file': 'One file at a time, please. See: {help}',
  'usage.option-elsewhere': 'The option "{name}" goes with --what {what}. See: {help}',
  'usage.whole-number': 'The option "{name}" cannot be "{value}". Use a whole number from 1 to {most}.',
  'usage.sheet-unknown': 'There is no sheet "{name}". Use one of: {known}.',
  'file.no-folder': 'There is no such folder to write into. Make it first, or choose another.',
  'file.is-folder': 'This is a folder. Add a name for the file.',
  'file.not-writable': 'Nothing can be written here. Choose another place, or check who may write.',
  'file.disk-full': 'The disk is full. Make room, then try again.',
  'print.nothing': 'This file ({format}) has nothing to print. Name a class, a challenge or a kit.',
  'print.kit-alone': 'A kit has no rules to print. Name a class file or a challenge file.',
  'print.no-challenge': 'This class has no challenge, so there is nothing to print. Add one first.',
  'print.no-paper': 'No piece of this kit is of paper and has a net, so no page was made.',
  'print.no-balls': 'There is no ball in this kit, so no page was made.',
  'print.written': '{file}: {pages}, {paper}.',
  'print.page': '1 page',
  'print.pages': '{count} pages',
  'print.replaced': 'A file of this name was there before; this one took its place.',
  'print.drawn': '{file}: a drawing of the net.',
  'print.nets': '{nets}: {kinds}.',
  'print.net': '1 net',
  'print.net-count': '{count} nets',
  'print.kind': '{kind} {count}',
  'print.sheets-of-paper': 'Copied as often as each page says, they take {count} sheets of paper.',
  'print.left-out': 'Left out: {sentence}',
  'print.try-split': 'Add --split to print in parts what is too large.',
  'print.not-paper': 'Not of paper, so without a net: {kinds}.',
  'print.to-scale': 'Print at 100 %, not fitted to the page. Then measure the bars on the paper.',
  'print.copies': 'copies: {count}',
} as const;
