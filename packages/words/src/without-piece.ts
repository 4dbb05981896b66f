// Which piece can you take out? How the rest does without it, and what goes first when it falls.

import type { WithoutPiece } from '@cairnmark/geometry';
import { failureSentences } from './failures.ts';
import type { Kinds } from './pieces.ts';
import { pieceName } from './pieces.ts';
import { fill } from './say.ts';
import { sayingOf } from './saying.ts';
import type { Voice } from './voice.ts';

/** `kinds` are those of the whole build; the indices of the answer, too. */
export function withoutPieceText(answer: WithoutPiece, piece: number, kinds: Kinds, voice: Voice): string {
  const { stability } = voice.words;
  const saying = kinds.length === 1 ? 'nothing' : sayingOf(answer);
  const sentence = fill(stability[`without.${saying}`], { piece: pieceName(piece, kinds, voice) });
  const falls = saying === 'falls' || saying === 'too-close-falls';
  const first = falls ? failureSentences(answer.first, 'falls', kinds, voice) : [];
  return [sentence, ...first].join(' ');
}
