// English texts of the best possible build.

export const best = {
  'best.tallest': 'The tallest build that can be: {value}.',
  'best.narrow': 'The tallest build that can be: {value}. It stands on a base of {base}.',
  'best.width': 'The most height for the width of its base: {value}.',
  'best.points': 'The most points that can be: {value}.',
  'best.points-for': 'The most points that can be for {measures}: {value}.',
  // The same where only towers were looked at.
  'best.tower-tallest': 'The tallest tower: {value}.',
  'best.tower-narrow': 'The tallest tower: {value}. It stands on a base of {base}.',
  'best.tower-points': 'The most points with a tower: {value}.',
  'best.tower-points-for': 'The most points with a tower for {measures}: {value}.',
  'best.tilt': 'The steadiest tower stands until the table is tilted by {value}.',
  'best.any': 'No build of these pieces that keeps the rules can have more.',
  'best.centred':
    'This is the best of all towers with each piece in the middle of the one below. Another build may have more.',
  'best.centred-to':
    'This is the best of all towers with each piece in the middle of the one below. Another build may have more, but no build has more than {most}.',
  'best.from-table': 'From the table up: {pieces}.',
  'best.beside': 'Beside it: {pieces}.',
  'best.piece': '{kind} on its {side}',
  'best.times': '{count} × {piece}',
  'best.stands-to': 'It stands until the table is tilted by {tilt}.',
  'best.close': 'That is so little that it may fall on a real table.',
  // No best build.
  'best.cut': 'The search stopped before the end: so many builds there are. Nothing here is called the best.',
  'best.cut-so-far': 'The best tower found so far has {value}.',
  'best.cut-most': 'No tower with each piece in the middle has more than {most}.',
  'best.too-few-pieces': 'The rules ask for {needed} or more. There are only {pieces}.',
  'best.too-few-carriers':
    'The rules ask for {needed} or more. No tower can have more than {most}: the other pieces do not carry.',
  'best.base-too-small': 'No tower stands on so small a base. The smallest that a piece needs is {base}.',
  'best.too-steep':
    'No tower with so many pieces stands on such a tilt. The steadiest of {pieces} stands until {tilt}.',
  'best.rules-clash': 'No tower keeps all these rules.',
  'best.no-goal': 'Nobody works out a best build here: places go by {measure}.',
  'best.no-rows': 'Nobody works out a best build here: no points are for height, base or the pieces themselves.',
  // What was not looked at.
  'best.rules-left': 'This was not looked at: {rules}.',
  'best.rows-left': 'Points for this are not among them: {measures}.',
  'best.rules-kept': 'This is kept, and what it is worth is not among the points: {rules}.',
  // On the screen.
  'best.whose': 'Worked out with all whole pieces of the class.',
  'best.front': 'How high on how small a base, with each piece in the middle of the one below?',
  'best.front-base': 'Base of at most',
  'best.front-height': 'Greatest height',
  'best.find': 'Work it out',
  'best.again': 'Work it out again',
  'best.working': 'Trying towers: {count} pieces set so far.',
  'best.stop': 'Stop',
  'best.stopped': 'Stopped. Nothing was worked out.',
  'best.failed': 'The search broke off. Load this page again.',
  'best.teacher-only': 'Pupils never see this build.',
  'best.show': 'Tell groups how near they come',
  'best.show-what':
    'When a group has its first result, its Score card says what part of the best possible it has reached. It is worked out with the pieces that the group has earned, in the sizes that it measured.',
  // What pupils read.
  'best.percent': 'This build reaches {percent} % of the best tower that the pieces allow.',
  'best.percent-about': 'This build reaches at least {percent} % of the best tower that the pieces allow.',
  'best.percent-points': 'For {measures} this build earns {percent} % of the most points that the pieces allow.',
  'best.percent-points-about':
    'For {measures} this build earns at least {percent} % of the most points that the pieces allow.',
  'best.percent-over': 'It is better than any tower with each piece in the middle of the one below!',
  'best.percent-working': 'How near is it to the best possible? Working it out …',
} as const;
