// A tower on squared paper beside a ruler, drawn from real sizes by the same code as the pieces on the shelf.

import { useMemo } from 'preact/hooks';
import { useScreenWords } from '../../app/use-words.ts';
import { DrawnSolid } from '../../drawing/drawn-solid.tsx';
import { colourToken, familyOf } from '../../drawing/family.ts';
import { linePath, ringPath } from '../../drawing/paths.ts';
import { NUMERAL_X_PX, RULER_WIDTH_PX, rulerLengthMm, rulerMarks, ticksPath } from '../../drawing/ruler-marks.ts';
import type { SheetLine } from '../../drawing/sheet.ts';
import { sheetLines, sheetUnder } from '../../drawing/sheet.ts';
import { drawingOf } from '../../drawing/solid-drawing.ts';
import { basisOf, flatIn, VIEWS } from '../../drawing/view.ts';
import '../../drawing/drawing.css';
import { towerBuild } from './tower-build.ts';

const VIEW = VIEWS.corner;
const BASIS = basisOf(VIEW);
/** Drawing units a mm. */
const SCALE = 1.08;
/** A height in the view, drawing units a mm. */
const RISE = SCALE * Math.cos(VIEW.elevationRad);
/** The middle of the table, and the left side of the ruler, from the left; drawing units. */
const MIDDLE = 185;
const RULER = 295;
const GROUND = 460;

export default function Tower() {
  const words = useScreenWords();
  const { pieces } = useMemo(towerBuild, []);
  const heightMm = Math.max(...pieces.map(({ topMm }) => topMm));
  const cm = (heightMm / 10).toLocaleString(words.language, { minimumFractionDigits: 1, maximumFractionDigits: 1 });
  const height = words.say('start.tower-height', { cm });
  return (
    <div className="hero">
      <svg viewBox="0 0 460 560" role="img" aria-label={words.say('start.tower', { height })}>
        <g transform={`translate(${MIDDLE} ${GROUND})`}>
          <Paper />
          {pieces.map((piece) => (
            <DrawnSolid
              key={piece.index}
              drawing={drawingOf(piece, VIEW)}
              token={colourToken(familyOf(piece.solid.id))}
              scale={SCALE}
            />
          ))}
        </g>
        <Ruler heightMm={heightMm} />
        <path
          className="level-line"
          d={linePath(
            [
              [MIDDLE + 4, GROUND - heightMm * RISE],
              [RULER, GROUND - heightMm * RISE],
            ],
            1,
          )}
        />
        <g transform={`translate(${RULER + RULER_WIDTH_PX} ${GROUND - heightMm * RISE})`}>
          <path className="level-arrow" d="M2 0l9-6v12Z" />
          <text className="level-text" x="16" y="7">
            {height}
          </text>
        </g>
      </svg>
    </div>
  );
}

function Paper() {
  const sheet = sheetUnder({ minX: -40, minY: -40, maxX: 40, maxY: 40 }, 'cm');
  const lines = sheetLines(sheet, 'cm');
  const { minX, minY, maxX, maxY } = sheet;
  const d = (isBold: boolean): string =>
    lines
      .filter((line) => line.isBold === isBold)
      .map(pathOf)
      .join('');
  return (
    <>
      <path
        className="paper-sheet"
        d={ringPath([onPage(minX, minY), onPage(maxX, minY), onPage(maxX, maxY), onPage(minX, maxY)], SCALE)}
      />
      <path className="paper-square" d={d(false)} />
      <path className="paper-bold" d={d(true)} />
      <radialGradient id="tower-shadow">
        <stop className="shadow-stop" offset="0.45" stopOpacity="0.3" />
        <stop className="shadow-stop" offset="1" stopOpacity="0" />
      </radialGradient>
      <ellipse rx={62 * SCALE} ry={62 * SCALE * Math.sin(VIEW.elevationRad)} fill="url(#tower-shadow)" />
    </>
  );
}

function Ruler({ heightMm }: { readonly heightMm: number }) {
  const lengthMm = rulerLengthMm(heightMm, 'cm');
  const marks = rulerMarks('cm', lengthMm, RISE);
  return (
    <>
      <rect
        className="ruler-wood"
        x={RULER}
        y={GROUND - lengthMm * RISE}
        width={RULER_WIDTH_PX}
        height={lengthMm * RISE}
        rx="2"
      />
      <path className="ruler-tick" d={ticksPath(marks, [RULER, GROUND], RISE)} />
      {marks.numerals.map(({ atMm, text }) => (
        <text key={text} className="ruler-numeral" x={RULER + NUMERAL_X_PX} y={GROUND - atMm * RISE + 4}>
          {text}
        </text>
      ))}
    </>
  );
}

const onPage = (x: number, y: number): readonly [number, number] => {
  const [right, up] = flatIn(BASIS, [x, y, 0]);
  return [right, -up];
};

const pathOf = ({ from, to }: SheetLine): string => linePath([onPage(...from), onPage(...to)], SCALE);
