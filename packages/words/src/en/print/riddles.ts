// English texts of the riddle sheet and of its answers.

export const riddles = {
  'print.riddle-how':
    'A secret rule gives points to every piece. Take the pieces and count. Which rule gives just these points?',
  'print.riddle-number': 'Riddle {number}',
  'print.riddle-one': 'One thing counts: 1 to 5 points for each of it.',
  'print.riddle-one+c': 'One thing counts: 1 to 5 points for each of it, and 0 to 3 points for the piece itself.',
  'print.riddle-two': 'One thing counts or two: 1 to 3 points for each.',
  'print.riddle-minus': 'One thing counts: 1 to 3 points for each of it. Another may take away 1 point for each.',
  'print.riddle-things': 'What may count: {things}.',
  'print.riddle-points': 'points',
  'print.riddle-check': 'Try your rule on the last piece. Then ask whether it is right.',
  'print.riddle-rule': 'Our rule',
  'print.riddle-each': '{points} for every {thing}',
  'print.riddle-itself': '{points} for the piece itself',
  'print.riddle-answer': 'The rule: {rule}.',
  'print.riddle-last': 'The last piece, {solid}: {points}.',
  'print.riddle-own':
    'For a rule of your own of this kind, score these pieces: {solids}. They tell every rule from every other.',
  'print.riddle-alike': 'Take none of these: on this kit {one} looks the same as {other}.',
  'print.riddle-none': 'With this kit no rule of this kind can be told, so there is no such riddle.',
} as const;
