// A supply game: its rules, and what a group has from it.

import type { Supply, SupplyRule } from '@cairnmark/scoring';
import { counted, listed } from './amounts.ts';
import type { Catalogue } from './catalogue.ts';
import { fill } from './say.ts';
import type { Voice } from './voice.ts';

/** The rules of the game: how it ends, when the next one goes, what becomes of a dropped piece. */
export function gameSentences({ ends, handOver, dropped }: SupplyRule, words: Catalogue): readonly string[] {
  const { supply } = words;
  return [endSentence(ends, words), supply[`hand-over.${handOver}`], supply[`dropped.${dropped}`]];
}

/** What it has by kind; then what it earned by round and by carrier, what was lost or dropped, and penalties, if any. */
export function supplySentences(supply: Supply, voice: Voice): readonly string[] {
  const { words } = voice;
  const texts = words.supply;
  const pieces = (count: number): string => counted('pieces', count, words);
  const rounds = supply.byRound.map((one) => fill(texts.round, { round: one.round, pieces: pieces(one.pieces) }));
  const carriers = supply.byCarrier.map((one) =>
    fill(texts.carrier, { carrier: one.carrier, pieces: pieces(one.pieces) }),
  );
  return [
    hasSentence(supply, voice),
    ...(rounds.length > 0 ? [fill(texts['by-round'], { rounds: listed(rounds, words.and) })] : []),
    ...(carriers.length > 0 ? [fill(texts['by-carrier'], { carriers: listed(carriers, words.and) })] : []),
    ...(supply.lost > 0 ? [fill(texts.lost, { pieces: pieces(supply.lost) })] : []),
    ...(supply.dropped > 0 ? [fill(texts.dropped, { pieces: pieces(supply.dropped) })] : []),
    ...(supply.penaltyPoints === 0
      ? []
      : [fill(texts.penalties, { points: counted('points', supply.penaltyPoints, words) })]),
  ];
}

function endSentence(ends: SupplyRule['ends'], words: Catalogue): string {
  const { supply } = words;
  switch (ends.kind) {
    case 'time':
      return fill(supply['ends.time'], { time: timeText(ends.seconds, words) });
    case 'turns':
      return fill(supply['ends.turns'], { turns: counted('turns', ends.turns, words) });
    case 'stock-empty':
      return supply['ends.stock-empty'];
  }
}

const SECONDS_A_MINUTE = 60;

const timeText = (seconds: number, words: Catalogue): string =>
  seconds % SECONDS_A_MINUTE === 0
    ? counted('minutes', seconds / SECONDS_A_MINUTE, words)
    : counted('seconds', seconds, words);

function hasSentence({ pieces }: Supply, { words, reader }: Voice): string {
  const kinds = Object.entries(pieces).filter(([, count]) => count > 0);
  if (kinds.length === 0) return words.supply.nothing;
  const all = kinds.reduce((sum, [, count]) => sum + count, 0);
  const named = kinds.map(([kind, count]) => fill(words.supply.kind, { count, kind: reader.kindName(kind) }));
  return fill(words.supply.has, { pieces: counted('pieces', all, words), kinds: listed(named, words.and) });
}
