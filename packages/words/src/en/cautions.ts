// English cautions, shown wherever builds are planned, made or tested.

import type { CautionTexts } from '../keys.ts';

export const cautions: CautionTexts = {
  'stands-or-falls':
    'Stand or fall is about light paper, foam or wood pieces on a table. It is no engineering check of anything that a person can stand on, under or in, snow and ice included.',
  cutting: 'Scissors and craft knives: adults cut for young pupils. Carry them closed, point down.',
  'hot-glue': 'Hot glue is for adults only.',
  'tall-towers': 'Towers above eye level: stand clear when testing. Never climb on chairs or on a build.',
  running: 'Running games indoors: clear the floor. No running with scissors.',
  photos: 'Photos show pieces only, no faces.',
  'school-rules': 'The rules of your school come first.',
};
