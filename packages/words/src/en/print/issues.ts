// English sentences for everything that keeps a sheet from being printed: what is wrong, then what to do.

import type { PrintIssueTexts } from '../../print.ts';

export const printIssues = {
  'character-unprintable':
    'The sign "{character}" in "{text}" cannot be printed. Write it with letters of English or Spanish.',
  'text-too-wide': '"{text}" needs {neededMm} and has only {roomMm}. Write it shorter.',
  'text-too-high': '"{text}" needs a height of {neededMm} and has only {roomMm}. Write it shorter.',
  'part-too-wide': 'A part of the sheet is {neededMm} wide, and there is room for {roomMm}. Make it smaller.',
  'part-too-high': 'A part of the sheet is {neededMm} high, and a page holds {roomMm}. Split it.',
  'outline-too-large':
    '"{id}" does not fit a page: there is room for {widthMm} by {heightMm}. Make it smaller, or split it.',
  'pages-too-many': 'The sheet needs {count} pages, and at most {most} are allowed. Leave something out.',
  'no-supply-game':
    'Pieces are not earned in a game here. Choose a game on the screen Challenge, then print its sheet.',
  'no-table-cards': 'No group has a table word yet. Table words come when the class is shared.',
  'no-marks':
    'Nothing is marked here, and no rule is one that a person says yes or no to. Add one on the screen Challenge, then print its sheet.',
} as const satisfies PrintIssueTexts;
