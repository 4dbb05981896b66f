// The build as a still drawing on squared paper with its ruler: for browsers that draw nothing in space.

import type { Basis, PlacedPiece, Vec2, Vec3 } from '@cairnmark/geometry';
import { useMemo } from 'preact/hooks';
import '../../drawing/drawing.css';
import { DrawnSolid } from '../../drawing/drawn-solid.tsx';
import { colourToken, familyOf } from '../../drawing/family.ts';
import { linePath } from '../../drawing/paths.ts';
import { sheetLines, sheetUnder } from '../../drawing/sheet.ts';
import { drawingOf } from '../../drawing/solid-drawing.ts';
import type { ViewName } from '../../drawing/view.ts';
import { basisOf, flatIn, VIEWS } from '../../drawing/view.ts';

interface Still {
  readonly pieces: readonly PlacedPiece[];
  readonly view: ViewName;
  readonly unit: 'cm' | 'in';
}

/** mm round the drawing. */
const ROOM_MM = 20;

export function StillScene({ pieces, view, unit }: Still) {
  const { drawings, lines, box } = useMemo(() => drawn(pieces, view, unit), [pieces, view, unit]);
  return (
    <svg className="still" viewBox={box} aria-hidden="true">
      {lines.map(({ d, isBold }) => (
        <path key={d} className={isBold ? 'paper-bold' : 'paper-square'} d={d} />
      ))}
      {drawings.map(({ index, drawing, token }) => (
        <DrawnSolid key={index} drawing={drawing} token={token} scale={1} />
      ))}
    </svg>
  );
}

function drawn(pieces: readonly PlacedPiece[], view: ViewName, unit: 'cm' | 'in') {
  const basis = basisOf(VIEWS[view]);
  const sheet = sheetUnder({ minX: -50, minY: -50, maxX: 50, maxY: 50 }, unit);
  const lines = sheetLines(sheet, unit).map(({ from, to, isBold }) => ({
    isBold,
    d: linePath([onPage(basis, [...from, 0]), onPage(basis, [...to, 0])], 1),
  }));
  const farFirst = [...pieces].sort((a, b) => depthOf(b, view) - depthOf(a, view));
  const drawings = farFirst.map((piece) => ({
    index: piece.index,
    drawing: drawingOf(piece, VIEWS[view]),
    token: colourToken(familyOf(piece.solid.id)),
  }));
  const points = [
    ...drawings.flatMap(({ drawing }) => drawing.outline),
    onPage(basis, [sheet.minX, sheet.minY, 0]),
    onPage(basis, [sheet.maxX, sheet.maxY, 0]),
    onPage(basis, [sheet.minX, sheet.maxY, 0]),
    onPage(basis, [sheet.maxX, sheet.minY, 0]),
  ];
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const [left, top] = [Math.min(...xs) - ROOM_MM, Math.min(...ys) - ROOM_MM];
  const size = [Math.max(...xs) - left + ROOM_MM, Math.max(...ys) - top + ROOM_MM];
  return { lines, drawings, box: `${left} ${top} ${size.join(' ')}` };
}

/** Pages have y downwards. */
function onPage(basis: Basis, point: Vec3): Vec2 {
  const [x, y] = flatIn(basis, point);
  return [x, -y];
}

/** How far away the middle of a piece lies: what is nearer is drawn over it. Of pieces on each other the upper is nearer. */
function depthOf({ shift, bottomMm, topMm }: PlacedPiece, view: ViewName): number {
  const { away } = basisOf(VIEWS[view]);
  return shift[0] * away[0] + shift[1] * away[1] + ((bottomMm + topMm) / 2) * away[2];
}
