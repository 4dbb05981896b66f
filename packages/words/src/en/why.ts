// English sentences about what separates two builds, and about what changed between two tries of a group.

export const why = {
  'takes-no-place': '{name} takes no place: {reason}',
  of: '{value} ({name})',
  differ: '{what}: {first}, {second}.',
  same: '{what}: the same, {value}.',
  ahead: '{sentence} Ahead: {name}.',
  'ahead-by': '{sentence} Ahead: {name}, by {by}.',
  'within-error': '{sentence} That is within measuring error.',
  level: 'Level in all that the ranking asks.',
  'not-measured': 'not measured',
  'no-points': 'no result',
  'not-known': 'not known',
  row: 'points for {measure}',
  rule: 'rule "{rule}"',
  'with-points': '{verdict}: {points}',
  'own-result': 'own result, {measure}',
  fallen: 'points of a build that fell',
  adjustments: 'points by hand',
  total: 'total',
  change: '{measure}: {before} before, {after} now.',
} as const;
