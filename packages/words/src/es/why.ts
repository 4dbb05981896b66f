// Spanish sentences about what separates two builds, and about what changed between two tries of a group.

import type { WhyTexts } from '../catalogue.ts';

export const why: WhyTexts = {
  'takes-no-place': '{name} no tiene puesto: {reason}',
  of: '{value} ({name})',
  differ: '{what}: {first}, {second}.',
  same: '{what}: igual, {value}.',
  ahead: '{sentence} Por delante: {name}.',
  'ahead-by': '{sentence} Por delante: {name}, con {by} de diferencia.',
  'within-error': '{sentence} Está dentro del error de medida.',
  level: 'Igualados en todo lo que pide el orden.',
  'not-measured': 'sin medir',
  'no-points': 'sin resultado',
  'not-known': 'no se sabe',
  row: 'puntos por {measure}',
  rule: 'regla "{rule}"',
  'with-points': '{verdict}: {points}',
  'own-result': 'resultado propio, {measure}',
  fallen: 'puntos de una construcción que se cayó',
  adjustments: 'puntos dados a mano',
  total: 'total',
  change: '{measure}: antes {before}, ahora {after}.',
};
