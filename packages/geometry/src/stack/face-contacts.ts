// Where flat faces of two pieces touch, or a flat face touches the table: lying on, side by side, or slanted.
// Upright boxes, first of pieces, then of faces, leave only faces that are near each other to be compared. mm, mm2.

import type { Box3 } from '../kernel/box.ts';
import { boxesMeet } from '../kernel/box.ts';
import { CONTACT_AREA_MM2, CONTACT_MM } from '../kernel/tolerance.ts';
import type { FlatFace } from '../solids/types.ts';
import { bodyBox } from './body-box.ts';
import { areaOnTableMm2, faceBox, touchingAreaMm2 } from './face-pair.ts';
import { earlierNeighbours } from './plan-grid.ts';
import type { FaceContact, PlacedPiece } from './types.ts';

/** Every contact of two flat faces, one entry a pair of faces; of two pieces the one laid earlier is `first`. */
export function faceContacts(pieces: readonly PlacedPiece[]): readonly FaceContact[] {
  const boxed = pieces.map(withBoxes);
  const neighbours = earlierNeighbours(
    boxed.map(({ box }) => box),
    CONTACT_MM,
  );
  const contacts: FaceContact[] = [];
  boxed.forEach((second, order) => {
    contacts.push(...tableContacts(second));
    for (const index of neighbours(order)) {
      const first = boxed[index];
      if (first !== undefined && boxesMeet(first.box, second.box, CONTACT_MM)) {
        contacts.push(...contactsBetween(first, second));
      }
    }
  });
  return contacts.filter(({ areaMm2 }) => areaMm2 > CONTACT_AREA_MM2);
}

interface BoxedFace {
  readonly face: FlatFace;
  readonly box: Box3;
}

interface BoxedPiece {
  readonly index: number;
  readonly box: Box3;
  readonly faces: readonly BoxedFace[];
}

const withBoxes = ({ index, body, flatFaces }: PlacedPiece): BoxedPiece => ({
  index,
  box: bodyBox(body),
  faces: flatFaces.map((face) => ({ face, box: faceBox(face) })),
});

const tableContacts = ({ index, faces }: BoxedPiece): readonly FaceContact[] =>
  faces.map(({ face }) => ({ first: index, second: 'table', areaMm2: areaOnTableMm2(face) }));

function contactsBetween(first: BoxedPiece, second: BoxedPiece): readonly FaceContact[] {
  const near = second.faces.filter(({ box }) => boxesMeet(box, first.box, CONTACT_MM));
  return first.faces
    .filter(({ box }) => boxesMeet(box, second.box, CONTACT_MM))
    .flatMap((a) =>
      near
        .filter((b) => boxesMeet(a.box, b.box, CONTACT_MM))
        .map((b) => ({ first: first.index, second: second.index, areaMm2: touchingAreaMm2(a.face, b.face) })),
    );
}
