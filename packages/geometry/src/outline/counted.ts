// The boundary as it is counted for perimeter, parts and holes: that of the union, with narrow gaps filled where sides
// face each other, and links laid where pieces only come near at a place; mm.

import type { Foot } from './closest.ts';
import type { Contacts } from './contacts.ts';
import type { Filling } from './fillings.ts';
import { fillingsOf } from './fillings.ts';
import type { NarrowPlace } from './links.ts';
import { linksAt, narrowPlaces } from './links.ts';
import { nearBoxes } from './near.ts';
import type { Piece } from './piece.ts';
import type { LocalFrame } from './pieces-of.ts';
import { NO_SPANS, WHOLE_SIDE } from './spans.ts';
import type { Strand } from './strands.ts';
import { strandsOfFilling, strandsOfLink, strandsOfPiece } from './strands.ts';
import type { EdgesLeft } from './walk.ts';
import { walk } from './walk.ts';

/** A union as walked: its pieces, what is left of the boundary of each, who is near whom, who touches whom. */
export interface WalkedUnion {
  readonly pieces: readonly Piece[];
  readonly left: readonly EdgesLeft[];
  readonly near: readonly (readonly number[])[];
  readonly contacts: Contacts;
  readonly frame: LocalFrame;
}

export interface CountedBoundary {
  readonly strands: readonly Strand[];
  readonly fillings: readonly Filling[];
  readonly links: readonly NarrowPlace[];
}

/** The counted boundary, gaps up to `reachMm` closed. Pieces that come within reach are told to the contacts. */
export function countedBoundary(union: WalkedUnion, reachMm: number): CountedBoundary {
  const { pieces, contacts, frame } = union;
  const fillings = fillingsOf(pieces, union.left, union.near, { reachMm, noiseMm: frame.noiseMm }, (i, j) =>
    contacts.touch(i, j, Number.POSITIVE_INFINITY),
  );
  const filled = fillings.length === 0 ? union : withFillings(union, fillings, reachMm);
  const ground = { ...filled, ...frame, areJoined: contacts.areJoined, reachMm };
  const places = narrowPlaces(pieces.length, ground);
  for (const { a, b } of places) contacts.touch(a, b, 0);
  const links = linksAt(places, ground);
  return { strands: strandsOf(filled, fillings, links), fillings, links };
}

/** The union with the fillings as further pieces: what they cover of its boundary is gone, their free mouths are added. */
function withFillings(union: WalkedUnion, fillings: readonly Filling[], reachMm: number): WalkedUnion {
  const count = union.pieces.length;
  const pieces = [...union.pieces, ...fillings.map(({ piece }) => piece)];
  const near = nearBoxes(pieces, reachMm);
  const input = {
    pieces,
    near: near.map((indices, i) => (i < count ? indices.filter((j) => j >= count) : indices)),
    noiseMm: union.frame.noiseMm,
    roundingMm: union.frame.roundingMm,
    meet: () => {},
  };
  const start = (_: Piece, i: number): EdgesLeft => union.left[i] ?? mouthsOf(fillings[i - count]);
  return { ...union, pieces, near, left: walk(input, start) };
}

/** Of a filling only the mouths can be boundary: its bases lie on the sides that it joins. */
function mouthsOf(filling: Filling | undefined): EdgesLeft {
  if (filling === undefined) return [];
  const { piece, mouths } = filling;
  return piece.edges.map((edge) => (mouths.includes(edge) ? WHOLE_SIDE : NO_SPANS));
}

function strandsOf(
  { pieces, left, frame }: WalkedUnion,
  fillings: readonly Filling[],
  links: readonly NarrowPlace[],
): readonly Strand[] {
  const count = pieces.length - fillings.length;
  const feet: Foot[][] = pieces.map(() => []);
  for (const { a, b, onA, onB } of links) {
    feet[a]?.push(onA);
    feet[b]?.push(onB);
  }
  return [
    ...pieces.slice(0, count).flatMap((piece, i) => strandsOfPiece(piece, left[i] ?? [], feet[i] ?? [], frame.nodeMm)),
    ...fillings.flatMap((filling, k) => strandsOfFilling(filling, left[count + k] ?? [])),
    ...links.flatMap((link) => strandsOfLink(link, frame.nodeMm)),
  ];
}
