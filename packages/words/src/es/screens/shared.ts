// Spanish texts of the Score card that other screens use too: what became of a build, and how it is told.

export const shared = {
  'score-card.kept': 'Cumplida',
  'score-card.broken': 'No cumplida',
  'score-card.share': 'Compartir este intento',
  'score-card.state-stood': 'Se sostuvo',
  'score-card.state-fell-before-measuring': 'Se cayó antes de medir',
  'score-card.state-fell': 'Se cayó después de un rato',
  'score-card.state-not-taking-part': 'No participa',
  'score-card.state-absent': 'Ausente',
  'score-card.seconds-fell': 'Segundos hasta que se cayó',
} as const;
