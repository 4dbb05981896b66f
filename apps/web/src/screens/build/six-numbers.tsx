// Six numbers of the build, each with its unit; a dash where nothing is known yet.

import type { Report } from '@cairnmark/engine';
import type { MeasureId } from '@cairnmark/geometry';
import type { ScreenKey } from '@cairnmark/words';
import type { BuildWords } from '../../app/use-build-words.ts';
import { useScreenWords } from '../../app/use-words.ts';
import { NumberText } from '../../parts/number-text.tsx';
import type { Shown } from './shown.ts';
import { tiltFigure, tiltText } from './tilt-figure.ts';

const MEASURES = [
  ['height', 'read.height'],
  ['base-area', 'read.base'],
  ['footprint-area', 'read.footprint'],
  ['footprint-perimeter', 'read.perimeter'],
  ['volume', 'read.volume'],
] as const satisfies readonly (readonly [MeasureId, ScreenKey])[];

export function SixNumbers({ at, words, worked, door }: Shown) {
  const screen = useScreenWords();
  const report = isDrawn(at) || door === 'numbers' ? worked.value : null;
  const tilt = tiltFigure(report?.stability ?? null);
  return (
    <dl className={worked.working ? 'read working' : 'read'}>
      {MEASURES.map(([measure, name]) => (
        <div key={measure}>
          <dt>{screen.say(name)}</dt>
          <dd>
            <NumberText text={factText(report, measure, words)} />
          </dd>
        </div>
      ))}
      <div className={tilt.none ? 'bad' : undefined}>
        <dt>{screen.say(tilt.name)}</dt>
        <dd>
          <NumberText text={tilt.none ? screen.say('read.none') : tiltText(tilt, words)} />
        </dd>
      </div>
    </dl>
  );
}

const isDrawn = ({ attempt }: Shown['at']): boolean =>
  attempt?.layout.kind === 'laid-out' && attempt.layout.pieces.length > 0;

/** What the drawing says now: a reading of the ruler belongs to the score card. */
function factText(report: Report | null, measure: MeasureId, { inClass }: BuildWords): string {
  const fact = report?.facts.find(({ id }) => id === measure)?.predicted;
  if (fact?.status !== 'measured') return '–';
  return inClass.amount(measure, fact.value, fact.tolerance);
}
