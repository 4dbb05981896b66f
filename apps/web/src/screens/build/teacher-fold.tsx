// Two further questions about a build: which tilt it bears towards one side, and which piece can be taken out.

import type { Tilt } from '@cairnmark/geometry';
import { useState } from 'react';
import { useScreenWords } from '../../app/use-words.ts';
import type { Build } from '../../workers/questions.ts';
import { useEngine } from '../../workers/use-engine.ts';
import type { Shown } from './shown.ts';
import { kindsIn } from './use-numbers-pieces.ts';

const SIDES = [
  { side: 'side.right', towardsRad: 0 },
  { side: 'side.back', towardsRad: Math.PI / 2 },
  { side: 'side.left', towardsRad: Math.PI },
  { side: 'side.front', towardsRad: (3 * Math.PI) / 2 },
] as const;

export function TeacherFold({ at, words }: Shown) {
  const screen = useScreenWords();
  const { attempt, challenge, group, record } = at;
  const engine = useEngine();
  const [answer, setAnswer] = useState<Answered | null>(null);
  if (attempt === null) return null;
  const build: Build = { attempt, challenge, group, events: record.supplies[challenge.id] ?? [] };
  const tell = (lines: readonly string[]): void => setAnswer({ of: attempt, lines });
  const tilt = async (towardsRad: number): Promise<void> => {
    const found: Tilt | null = await engine.ask('fold', 'tilt', { ...build, towardsRad }, ignore);
    tell([words.inClass.tiltTowards(found)]);
  };
  const without = async (): Promise<void> => {
    const kinds = kindsIn(attempt.layout);
    const found = (await engine.ask('fold', 'without', build, ignore)) ?? [];
    tell(found.flatMap((one, k) => (one === null ? [] : [words.inClass.withoutPiece(one, k, kinds)])));
  };
  return (
    <details>
      <summary>{screen.say('teacher.fold')}</summary>
      <p className="lab">{screen.say('teacher.tilt')}</p>
      <div className="row-of">
        {SIDES.map(({ side, towardsRad }) => (
          <button key={side} type="button" className="btn" onClick={() => void tilt(towardsRad)}>
            {screen.say(side)}
          </button>
        ))}
      </div>
      <p className="lab">{screen.say('teacher.without')}</p>
      <button type="button" className="btn" onClick={() => void without()}>
        {screen.say('teacher.ask')}
      </button>
      <ul aria-live="polite">{answer?.of === attempt && answer.lines.map((line) => <li key={line}>{line}</li>)}</ul>
    </details>
  );
}

/** An answer belongs to the build that was asked about. */
interface Answered {
  readonly of: object;
  readonly lines: readonly string[];
}

const ignore = (): void => undefined;
