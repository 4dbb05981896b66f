// English texts about the points lab beside those of its screen: at the terminal.

export const fair = {
  'fair.title': '{challenge}: what do the points favour?',
  'fair.points': 'Points: {rows}.',
  'fair.no-points': 'This challenge gives no points yet.',
  'fair.counting': 'How things are counted: {counting}.',
  'fair.today': 'points today',
  'fair.for-paper': 'for 100 cm²',
  'fair.favours-paper': 'For 100 cm² of paper most is earned by {favourites}.',
  'fair.each': 'Which solids can be favoured, with at most {most} a row?',
  'fair.can': '{solid}: {rule}.',
  'fair.cannot': '{solid}: no. {why}',
  'fair.one': 'Points that favour the {solid} by {lead} or more, at most {most} a row',
  'fair.rule': '{number}. {rule}. {lead}',
  'fair.scores': 'All pieces: {scores}.',
  'fair.score': '{solid} {points}',
  'fair.all-told': 'There is no other rule that uses other things.',
  'fair.maybe-more': 'There may be more rules; --rules tells how many to look for.',
  'fair.not-settled':
    'Given up after {count} steps: no points were found, and nothing shows that there are none. Try fewer rows or smaller points.',
  'fair.side': '{pieces}: {totals}',
  'fair.offer': '{offer} Then: {rule}. {lead}',
  'fair.offer-tried': 'Each of these was tried.',
  'fair.even': 'The fairest points, at most {most} a row',
  'fair.even-share': '{spread} That is {percent} %.',
} as const;
