// Six numbers of the build, each with its unit; a dash where nothing is known yet.

import type { Report } from '@cairnmark/engine';
import type { MeasureId, Stability } from '@cairnmark/geometry';
import type { ScreenKey } from '@cairnmark/words';
import type { BuildWords } from '../../app/use-build-words.ts';
import { useScreenWords } from '../../app/use-words.ts';
import { NumberText } from '../../parts/number-text.tsx';
import type { Shown } from './shown.ts';
import { shownTiltRad } from './shown-tilt.ts';

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
          <NumberText text={tilt.none ? screen.say('read.none') : tiltText(tilt.tiltRad, words)} />
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

interface TiltFigure {
  readonly name: 'read.tips' | 'read.slides';
  readonly tiltRad: number | null;
  readonly none: boolean;
}

/** The tilt that decides, by its name. */
function tiltFigure(stability: Stability | null): TiltFigure {
  if (stability === null) return { name: 'read.tips', tiltRad: null, none: false };
  const { tipsAt, slidesAt, standsTo, stands } = stability;
  const slides = slidesAt !== null && (tipsAt === null || slidesAt.tiltRad < tipsAt.tiltRad);
  return {
    name: slides ? 'read.slides' : 'read.tips',
    tiltRad: standsTo?.tiltRad ?? null,
    none: stands === false,
  };
}

const tiltText = (tiltRad: number | null, { inClass }: BuildWords): string =>
  tiltRad === null ? '–' : inClass.exactAmount('stands-to', shownTiltRad(tiltRad));
