// English sentences about a supply game: its rules, and what a group has from it.

import type { SupplyKey } from '../keys.ts';

export const supply = {
  has: '{pieces}: {kinds}.',
  nothing: 'No pieces.',
  kind: '{count} × {kind}',
  'by-round': 'Earned round by round: {rounds}.',
  round: '{pieces} in round {round}',
  'by-carrier': 'Earned by carrier: {carriers}.',
  carrier: '{pieces} by {carrier}',
  lost: 'Lost: {pieces}.',
  dropped: 'Dropped on the way: {pieces}.',
  penalties: 'Penalties: {points}.',
  'ends.time': 'The game ends after {time}.',
  'ends.turns': 'The game ends after {turns}.',
  'ends.stock-empty': 'The game ends when nothing is left to earn.',
  'hand-over.at-a-touch': 'The next one goes at a touch of hands.',
  'hand-over.once-it-lies': 'The next one goes once the piece lies in its place.',
  'hand-over.as-the-group-likes': 'The group settles when the next one goes.',
  'dropped.lost-this-turn': 'A piece that is dropped is lost for this turn.',
  'dropped.must-be-fetched': 'A piece that is dropped must be fetched.',
  'dropped.carrier-chooses': 'A piece that is dropped may be fetched or left, as the carrier likes.',
} as const satisfies Readonly<Record<SupplyKey, string>> & Readonly<Record<string, string>>;
