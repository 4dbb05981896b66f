// The area from above of what is traced so far.

import { CONTACT_MM, unionFacts } from '@cairnmark/geometry';
import type { TraceShown } from './shown.ts';
import { useTraceWords } from './trace-words.ts';

export function SoFar({ tracing: { shapes }, stood, words }: TraceShown) {
  const { say } = useTraceWords();
  const outlines = [...stood.map(({ piece }) => piece.outline), ...shapes.map(({ shape }) => shape.outline)];
  if (outlines.length === 0) return null;
  const { areaMm2 } = unionFacts(outlines, { contactMm: CONTACT_MM, gapAllowanceMm: 0 });
  const errorMm2 = (shapes.length === 0 ? LISTED_SHARE : FREE_SHARE) * areaMm2;
  return (
    <p className="trace-so-far">
      <span className="mut">{say('trace.so-far')}</span>{' '}
      <b>{words.inClass.amount('footprint-area', areaMm2, errorMm2)}</b>{' '}
      <small>{words.inClass.error('footprint-area', errorMm2)}</small>
    </p>
  );
}

/** What a photo promises: of listed pieces 2 % of the area, of free shapes 5 %. */
const LISTED_SHARE = 0.02;
const FREE_SHARE = 0.05;
