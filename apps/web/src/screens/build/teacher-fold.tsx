// Two further questions about a build: which tilt it bears towards one side, and which piece can be taken out.

import { piecesUsed } from '@cairnmark/engine';
import type { Tilt } from '@cairnmark/geometry';
import { useState } from 'preact/hooks';
import { useScreenWords } from '../../app/use-words.ts';
import { HelpList } from '../../parts/asked-help.tsx';
import { buildOf, useEngine } from '../../workers/use-engine.ts';
import type { Shown } from './shown.ts';

const SIDES = [
  { side: 'side.right', towardsRad: 0 },
  { side: 'side.back', towardsRad: Math.PI / 2 },
  { side: 'side.left', towardsRad: Math.PI },
  { side: 'side.front', towardsRad: (3 * Math.PI) / 2 },
] as const;

export function TeacherFold({ at, words, help }: Shown) {
  const screen = useScreenWords();
  const { attempt } = at;
  const engine = useEngine();
  const [answer, setAnswer] = useState<Answered | null>(null);
  const build = buildOf(at);
  if (attempt === null || build === null) return null;
  const tell = (lines: readonly string[]): void => setAnswer({ of: attempt, lines });
  const ask = (asking: Promise<void>): void => {
    asking.catch(() => tell([screen.say('verdict.failed')]));
  };
  const tilt = async (towardsRad: number): Promise<void> => {
    const found: Tilt | null = await engine.ask('fold', 'tilt', { ...build, towardsRad }, ignore);
    tell([words.inClass.tiltTowards(found)]);
  };
  const without = async (): Promise<void> => {
    const kinds = piecesUsed(attempt.layout);
    const found = (await engine.ask('fold', 'without', build, ignore)) ?? [];
    tell(found.flatMap((one, k) => (one === null ? [] : [words.inClass.withoutPiece(one, k, kinds)])));
  };
  return (
    <>
      <HelpList on={help} items={[['help.teacher', screen.say('teacher.fold')]]} />
      <details>
        <summary>{screen.say('teacher.fold')}</summary>
        <p className="lab">{screen.say('teacher.tilt')}</p>
        <div className="row-of">
          {SIDES.map(({ side, towardsRad }) => (
            <button key={side} type="button" className="btn" onClick={() => ask(tilt(towardsRad))}>
              {screen.say(side)}
            </button>
          ))}
        </div>
        <p className="lab">{screen.say('teacher.without')}</p>
        <button type="button" className="btn" onClick={() => ask(without())}>
          {screen.say('teacher.ask')}
        </button>
        <ul aria-live="polite">{answer?.of === attempt && answer.lines.map((line) => <li key={line}>{line}</li>)}</ul>
      </details>
    </>
  );
}

/** An answer belongs to the build that was asked about. */
interface Answered {
  readonly of: object;
  readonly lines: readonly string[];
}

const ignore = (): void => undefined;
