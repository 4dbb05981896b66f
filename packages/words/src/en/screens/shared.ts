// English texts of the Score card that other screens use too: what became of a build, and how it is told.

export const shared = {
  'score-card.kept': 'Kept',
  'score-card.broken': 'Not kept',
  'score-card.share': 'Share this try',
  'score-card.state-stood': 'It stood',
  'score-card.state-fell-before-measuring': 'Fell before measuring',
  'score-card.state-fell': 'Fell after a while',
  'score-card.state-not-taking-part': 'Not taking part',
  'score-card.state-absent': 'Absent',
  'score-card.seconds-fell': 'Seconds until it fell',
} as const;
