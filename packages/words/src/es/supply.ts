// Spanish sentences about a supply game: its rules, and what a group has from it.

import type { SupplyTexts } from '../catalogue.ts';

export const supply: SupplyTexts = {
  has: '{pieces}: {kinds}.',
  nothing: 'Ninguna pieza.',
  kind: '{count} × {kind}',
  'by-round': 'Ganado ronda por ronda: {rounds}.',
  round: '{pieces} en la ronda {round}',
  'by-carrier': 'Ganado por quien las trajo: {carriers}.',
  carrier: '{pieces} por {carrier}',
  lost: 'Perdido: {pieces}.',
  dropped: 'Caído por el camino: {pieces}.',
  penalties: 'Penalizaciones: {points}.',
  'ends.time': 'El juego acaba después de {time}.',
  'ends.turns': 'El juego acaba después de {turns}.',
  'ends.stock-empty': 'El juego acaba cuando no queda nada que ganar.',
  'hand-over.at-a-touch': 'El relevo es con un toque de manos.',
  'hand-over.once-it-lies': 'El relevo es cuando la pieza está en su lugar.',
  'hand-over.as-the-group-likes': 'El grupo decide cuándo es el relevo.',
  'dropped.lost-this-turn': 'Una pieza que se cae se pierde en este turno.',
  'dropped.must-be-fetched': 'Una pieza que se cae hay que recogerla.',
  'dropped.carrier-chooses': 'Una pieza que se cae se recoge o se deja, como quiera quien la lleva.',
};
