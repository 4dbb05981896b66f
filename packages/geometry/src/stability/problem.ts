// A stack of pieces as a problem of statics: masses at their places, patches where pieces rest. Frame of the table.

import { boxOfBoth, EMPTY_BOX } from '../kernel/box.ts';
import { rotate } from '../kernel/rotation.ts';
import { add3, length3, sub3 } from '../kernel/vec.ts';
import { bodyBox } from '../stack/body-box.ts';
import type { PlacedPiece, Stack, Support } from '../stack/types.ts';
import type { Rocker } from './dome.ts';
import { selfRighting } from './dome.ts';
import type { OwnMass } from './material.ts';
import { patchesOf } from './patches.ts';
import type { BodyMass, StaticProblem } from './types.ts';

export interface Substance {
  readonly massOf: (piece: PlacedPiece) => OwnMass;
  /** Coefficient of friction where one piece rests on another or on the table. */
  readonly frictionOf: (support: Support) => number;
}

export function staticProblem(stack: Stack, { massOf, frictionOf }: Substance): StaticProblem {
  const box = stack.pieces.map(({ body }) => bodyBox(body)).reduce(boxOfBoth, EMPTY_BOX);
  const masses = stack.pieces.map((piece) => bodyMass(piece, massOf(piece)));
  const touching = patchesOf(stack, frictionOf);
  const rockers = stack.pieces.flatMap((piece, i) => {
    const mass = masses[i];
    return mass === undefined ? [] : (selfRighting(stack, piece, mass, touching) ?? []);
  });
  const rockerAt = (index: number): Rocker | undefined => rockers.find(({ foot }) => foot.upper === index);
  const bodies = masses.map((mass, i) => rockerAt(i)?.body ?? mass);
  const patches = touching.map((patch) => rockerAt(patch.upper)?.foot ?? patch);
  return { bodies, patches, sizeMm: length3(sub3(box.max, box.min)) };
}

function bodyMass(piece: PlacedPiece, { massG, centre }: OwnMass): BodyMass {
  const { min, max } = bodyBox(piece.body);
  // A box of that size has these moments of inertia about its middle, averaged over the three axes.
  const gyrationMm = length3(sub3(max, min)) / Math.sqrt(18);
  return { massG, centre: add3(rotate(piece.rotation, centre), piece.shift), gyrationMm };
}
