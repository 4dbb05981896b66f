// Changes to the kit of a challenge: names, numbers, sizes, kinds. What follows from its materials is in kit-materials.ts.

import type { ClassRecord, KindOfPiece, Kit } from '@cairnmark/engine';
import { piecesUsed, TABLE } from '@cairnmark/engine';
import type { Sizes } from '@cairnmark/geometry';
import type { Change } from './class-changes.ts';
import { changeKit, changePieces } from './kit-scope.ts';
import { isPlayed } from './played.ts';

export const nameKit = (challenge: string, name: string): Change => changeKit(challenge, (kit) => ({ ...kit, name }));

export const nameKind = (challenge: string, kind: string, name: string): Change =>
  changeKit(
    challenge,
    onKind(kind, (one) => ({ ...one, name })),
  );

/** How many pieces were made. A number that would alter a result that is there already changes nothing: see `buildAgainst`. */
export const stockKind =
  (challenge: string, kind: string, stock: number): Change =>
  (record) =>
    buildAgainst(record, challenge, kind, stock) === null
      ? changeKit(
          challenge,
          onKind(kind, (one) => ({ ...one, stock })),
        )(record)
      : record;

/** Pieces of the kind in a build of the challenge that would be too many, or no longer be; null: no result changes. */
export function buildAgainst(record: ClassRecord, challenge: string, kind: string, stock: number): number | null {
  const now = record.challenges.find(({ id }) => id === challenge)?.kit.kinds.find(({ id }) => id === kind)?.stock;
  if (now === undefined) return null;
  const used = record.attempts
    .filter((attempt) => attempt.challenge === challenge)
    .map(({ layout }) => piecesUsed(layout).filter((one) => one === kind).length);
  return used.find((count) => count > now !== count > stock) ?? null;
}

/**
 * How many pieces of a kind are out of use. The pieces are the same whatever is built with them, and no result depends on
 * it, so that every challenge with this kit gets the number, built under or not.
 */
export const crushKind =
  (challenge: string, kind: string, crushed: number): Change =>
  (record) => {
    const kit = record.challenges.find(({ id }) => id === challenge)?.kit.id;
    const crush = onKind(kind, (one) => withCrushed(one, Math.max(0, Math.min(crushed, one.stock))));
    return {
      ...record,
      challenges: record.challenges.map((one) => (one.kit.id === kit ? { ...one, kit: crush(one.kit) } : one)),
    };
  };

/** See `sidesStay`: then another number of sides changes nothing. */
export const sizeKind =
  (challenge: string, kind: string, sizes: Sizes): Change =>
  (record) => {
    const before = record.challenges.find(({ id }) => id === challenge)?.kit.kinds.find(({ id }) => id === kind);
    if (before?.solid.sizes['sides'] !== sizes['sides'] && sidesStay(record, kind)) return record;
    return changePieces(
      challenge,
      onKind(kind, (one) => ({ ...one, solid: { ...one.solid, sizes } })),
    )(record);
  };

/**
 * Another number of sides makes another solid. What groups measured of a kind counts in all challenges, so that it is one
 * solid for good once a group has measured or built with it.
 */
export const sidesStay = (record: ClassRecord, kind: string): boolean =>
  record.groups.some(({ measured }) => Object.hasOwn(measured, kind)) ||
  record.challenges.some(({ id, kit }) => isPlayed(record, id) && kit.kinds.some((one) => one.id === kind));

export const addKind = (challenge: string, kind: KindOfPiece): Change =>
  changePieces(challenge, (kit) => ({ ...kit, kinds: [...kit.kinds, kind] }));

/** With the kind go the frictions of a surface that no other kind has, and what groups measured of it. */
export const takeAwayKind =
  (challenge: string, kind: string): Change =>
  (record) => {
    const after = changePieces(challenge, (kit) =>
      withoutLostFrictions({ ...kit, kinds: kit.kinds.filter(({ id }) => id !== kind) }),
    )(record);
    if (after === record || after.challenges.some(({ kit }) => kit.kinds.some(({ id }) => id === kind))) return after;
    return { ...after, groups: after.groups.map((group) => ({ ...group, measured: without(group.measured, kind) })) };
  };

/** What was printed came out at `share` of its size: every kind folded from a printed net becomes so much smaller or larger. */
export const scalePrinted = (challenge: string, share: number): Change =>
  changePieces(challenge, (kit) => ({
    ...kit,
    kinds: kit.kinds.map((kind) => (isPrinted(kind) ? scaled(kind, share) : kind)),
  }));

export const isPrinted = ({ material }: KindOfPiece): boolean =>
  material.kind === 'folded-paper' && material.printedNet;

/** The sizes of a kind when all its lengths become `share` of what they were. */
export const scaledSizes = ({ solid }: KindOfPiece, share: number): Sizes =>
  Object.fromEntries(
    Object.entries(solid.sizes).map(([name, value]) => [name, name === 'sides' ? value : value * share]),
  );

/** A group's own sizes of a kind; null: it has those of the kit. */
export const measureKind =
  (group: string, kind: string, sizes: Sizes | null): Change =>
  (record) => ({
    ...record,
    groups: record.groups.map((one) => {
      if (one.id !== group) return one;
      return { ...one, measured: sizes === null ? without(one.measured, kind) : { ...one.measured, [kind]: sizes } };
    }),
  });

/** The kit with one kind changed. */
export const onKind =
  (kind: string, change: (kind: KindOfPiece) => KindOfPiece) =>
  (kit: Kit): Kit => ({ ...kit, kinds: kit.kinds.map((one) => (one.id === kind ? change(one) : one)) });

/** A friction that no kind and not the table has would be refused. */
export function withoutLostFrictions(kit: Kit): Kit {
  const surfaces = new Set([...kit.kinds.map(({ surface }) => surface), TABLE]);
  return { ...kit, frictions: kit.frictions.filter(({ between }) => between.every((one) => surfaces.has(one))) };
}

const scaled = (kind: KindOfPiece, share: number): KindOfPiece => ({
  ...kind,
  solid: { ...kind.solid, sizes: scaledSizes(kind, share) },
});

/** None is the same as no number. */
function withCrushed({ crushed: _, ...kind }: KindOfPiece, crushed: number): KindOfPiece {
  return crushed === 0 ? kind : { ...kind, crushed };
}

const without = <V>(all: Readonly<Record<string, V>>, key: string): Readonly<Record<string, V>> =>
  Object.fromEntries(Object.entries(all).filter(([name]) => name !== key));
