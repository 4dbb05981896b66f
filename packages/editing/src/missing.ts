// A command about a piece that is not there.

import type { EditIssue, Pieces } from './types.ts';

/** That there is no piece of this number. */
export const missingPiece = (pieces: Pieces, piece: number): EditIssue => ({
  code: 'no-such-piece',
  path: ['piece'],
  details: { piece, count: pieces.length },
});
