// The area from above of what is traced so far.

import type { Outline } from '@cairnmark/geometry';
import { useEffect, useState } from 'preact/hooks';
import type { TraceShown } from './shown.ts';
import { useTraceWords } from './trace-words.ts';

export function SoFar({ tracing, stood, client, words }: TraceShown) {
  const { say } = useTraceWords();
  const { pieces, shapes } = tracing;
  const [area, setArea] = useState<{ readonly of: readonly unknown[]; readonly mm2: number } | null>(null);
  const outlines = [...stood.map(({ piece }) => piece.outline), ...shapes.map(({ shape }) => shape.outline)];
  const askArea = (all: readonly Outline[], isCurrent: () => boolean): void => {
    client
      .ask('area', 'area', all, () => undefined)
      .then((answer) => {
        if (answer !== null && isCurrent()) setArea({ of: [pieces, shapes], mm2: answer.areaMm2 });
      })
      .catch(() => undefined);
  };
  useEffect(() => {
    let current = true;
    if (outlines.length > 0) askArea(outlines, () => current);
    return () => {
      current = false;
    };
  }, [client, pieces, shapes]);
  // The area of what was there before says nothing of what is there now.
  if (outlines.length === 0 || area === null || area.of[0] !== pieces || area.of[1] !== shapes) return null;
  const errorMm2 = (shapes.length === 0 ? LISTED_SHARE : FREE_SHARE) * area.mm2;
  return (
    <p className="trace-so-far">
      <span className="mut">{say('trace.so-far')}</span>{' '}
      <b>{words.inClass.amount('footprint-area', area.mm2, errorMm2)}</b>{' '}
      <small>{words.inClass.error('footprint-area', errorMm2)}</small>
    </p>
  );
}

/** What a photo promises: of listed pieces 2 % of the area, of free shapes 5 %. */
const LISTED_SHARE = 0.02;
const FREE_SHARE = 0.05;
