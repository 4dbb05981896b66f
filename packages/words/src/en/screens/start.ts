// English texts of the first screen.

export const start = {
  'start.title': 'Measure what you build.',
  'start.lede': 'Cairnmark measures stacked solids, says whether they stand, and shows all its working.',
  'start.teaching': 'Teaching?',
  'start.demo': 'Look round the demo class',
  'start.demo-what': 'Skerry Light: {groups} groups, {challenges} challenges. All of it is invented.',
  'start.demo-open': 'Open the demo',
  'start.file': 'Open a class file',
  'start.file-what': 'A class you kept before, from this or another computer.',
  'start.file-choose': 'Choose a file',
  'start.file-refused': 'The file {file} was not opened:',
  'start.file-more': 'and {count} more.',
  'start.last': 'Last time here: {name}',
  'start.last-what': '{when}, {groups} groups, kept on this computer',
  'start.go-on': 'Go on',
  'start.other-classes': 'Other classes kept here',
  'start.privacy': 'No accounts, no pupil names. Nothing leaves this device.',
  'start.tower': 'A tower of five paper solids on squared paper, {height} high by the ruler beside it',
  'start.tower-height': '{cm} cm',
  'start.kept-refused': 'The class kept on this device cannot be opened:',
} as const;
