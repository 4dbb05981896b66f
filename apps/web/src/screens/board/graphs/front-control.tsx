// The best possible as a line with steps in the graph of height against base: worked out when the teacher asks, once every group
// has a result. Groups are told a part of the whole at most, on their card, and never how high.

import { useEffect, useMemo } from 'preact/hooks';
import { useTalkWords } from '../../../app/talk-words.tsx';
import { useMay } from '../../../app/use-may.ts';
import { BestAsking } from '../../../parts/best-asking.tsx';
import type { Best } from '../../../workers/use-best.ts';
import type { BoardLine } from '../lines.ts';
import type { Scene } from '../scene.ts';
import type { ScatterDrawing } from './draw-scatter.ts';
import { recordsAreIn } from './graph-data.ts';

/** In the units that are shown; null: not asked for, or not to be had. */
export function useFront({ search, forget }: Best, scene: Scene): ScatterDrawing['front'] {
  const { challenge, inClass } = scene;
  const mayFront = useMayFront(scene);
  // What was found is of the rules and pieces as they were, and goes when the device is handed on.
  useEffect(() => forget, [challenge, mayFront, forget]);
  return useMemo(() => {
    const front = mayFront && search.kind === 'found' ? search.found.front : null;
    // What a search that was cut off has found must not be called the best.
    if (front === null || !front.finished) return null;
    const [base, height] = [inClass.unit('base-area').size, inClass.unit('height').size];
    return front.points.map((point) => ({ base: point.baseMm2 / base, height: point.heightMm / height }));
  }, [search, inClass, mayFront]);
}

/** Height is what this challenge seeks, and the teacher holds the device. */
export function useMayFront({ challenge }: Scene): boolean {
  const decides = useMay('decide');
  return decides && challenge.ranking.first.by === 'height';
}

export function FrontControl({
  best,
  lines,
  scene,
}: {
  readonly best: Best;
  readonly lines: readonly BoardLine[];
  readonly scene: Scene;
}) {
  const { say } = useTalkWords();
  const { challenge, words } = scene;
  if (!useMayFront(scene)) return null;
  if (!recordsAreIn(lines)) return <p className="mut">{say('graphs.front-wait')}</p>;
  const { search, ask, forget } = best;
  const isShown = search.kind === 'found' && search.found.front?.finished === true;
  return (
    <BestAsking best={best} words={words} told={isShown ? '' : say('graphs.front-none')} className="graph-front">
      <button
        type="button"
        className="btn"
        aria-pressed={isShown}
        onClick={() => (isShown ? forget() : ask({ challenge, whose: { group: null, earned: null }, front: true }))}
      >
        {say('graphs.front-show')}
      </button>
    </BestAsking>
  );
}
