// Changes to what the pieces of a kit are made of, and to the frictions of their surfaces.

import type { KindOfPiece, Kit } from '@cairnmark/engine';
import { TABLE } from '@cairnmark/engine';
import type { Change } from './class-changes.ts';
import { withoutLostFrictions } from './kit-changes.ts';
import { changePieces } from './kit-scope.ts';

/** `kinds`: ids of the kinds that change together. */
export const changeMaterial = (
  challenge: string,
  kinds: readonly string[],
  change: (kind: KindOfPiece) => KindOfPiece,
): Change =>
  changePieces(challenge, (kit) => ({
    ...kit,
    kinds: kit.kinds.map((one) => (kinds.includes(one.id) ? change(one) : one)),
  }));

/** Frictions that were stated for a surface go along with its new name, unless other kinds keep the old one. */
export const nameSurface = (challenge: string, kinds: readonly string[], surface: string): Change =>
  changePieces(challenge, (kit) => {
    const named = kit.kinds.map((one) => (kinds.includes(one.id) ? { ...one, surface } : one));
    const kept = new Set(named.map((one) => one.surface));
    const renamed = (name: string): string => (name === TABLE || kept.has(name) ? name : surface);
    return withoutLostFrictions({ ...kit, kinds: named, frictions: onceEach(kit.frictions.map(renamedBy(renamed))) });
  });

/** What was measured for two surfaces; null: the frictions of the kinds count. */
export const setPairFriction = (challenge: string, pair: Pair, friction: number | null): Change =>
  changePieces(challenge, (kit) => {
    const others = kit.frictions.filter(({ between }) => !samePair(between, pair));
    return { ...kit, frictions: friction === null ? others : [...others, { between: pair, friction }] };
  });

export type Pair = readonly [string, string];

/** Every two surfaces that can touch: each with itself, with the others, and with the table. */
export function pairsOf({ kinds }: Kit): readonly Pair[] {
  const surfaces = [...new Set(kinds.map(({ surface }) => surface))];
  return surfaces.flatMap((first, k) => [...surfaces.slice(k), TABLE].map((second): Pair => [first, second]));
}

export const samePair = ([a, b]: Pair, [c, d]: Pair): boolean => (a === c && b === d) || (a === d && b === c);

type Stated = Kit['frictions'][number];

const renamedBy =
  (renamed: (name: string) => string) =>
  ({ between: [a, b], friction }: Stated): Stated => ({ between: [renamed(a), renamed(b)], friction });

/** Of two pairs that have become one, the first stays. */
const onceEach = (frictions: readonly Stated[]): readonly Stated[] =>
  frictions.filter((one, k) => frictions.findIndex(({ between }) => samePair(between, one.between)) === k);
