import { demoClass } from '@cairnmark/demo';
import type { Attempt, ClassRecord } from '@cairnmark/engine';
import { describe, expect, it } from 'vitest';
import { staged } from './for-tests.ts';
import { progressOf } from './progress.ts';
import { progressText, tryText } from './progress-text.ts';

const GROUP = 'terns';
const CHALLENGE = 'tall-light';

interface Told {
  readonly heightMm: number;
  readonly fell?: true;
  readonly open?: true;
}

/** The demo with these tries of the Terns at Tall Light in place of their own, five minutes apart. */
function withTries(tries: readonly Told[]): ClassRecord {
  const record = demoClass();
  const pattern = record.attempts.find((one) => one.group === GROUP && one.challenge === CHALLENGE);
  if (pattern === undefined) throw new RangeError('the demo has changed');
  const others = record.attempts.filter((one) => one !== pattern);
  const own = tries.map(
    ({ heightMm, fell, open }, k): Attempt => ({
      ...pattern,
      id: `try-${k + 1}`,
      at: `2026-03-05T10:${String(10 + 5 * k)}:00+01:00`,
      observed: { heightReadingsMm: [heightMm] },
      state: fell ? { kind: 'fell', afterSeconds: 4 } : { kind: 'stood' },
      confirmedBy: open ? null : 'teacher',
    }),
  );
  return { ...record, attempts: [...others, ...own] };
}

function told(...tries: readonly Told[]) {
  const { scene, lines } = staged(withTries(tries), CHALLENGE);
  const line = lines.find(({ group }) => group === GROUP);
  if (line === undefined) throw new RangeError('the group is gone');
  const progress = progressOf(line, scene.challenge);
  return {
    progress,
    text: progressText(progress, scene),
    tries: progress.tries.map((one, k) => tryText(one, k + 1, scene)),
  };
}

describe('own progress', () => {
  it('holds the best try against the best before it', () => {
    const { text } = told({ heightMm: 300 }, { heightMm: 320 }, { heightMm: 310 }, { heightMm: 349 });
    expect(text).toBe('Best so far: try 4, 34.9 cm. The best before it: 32.0 cm.');
  });

  it('says when the ruler cannot tell', () => {
    // 3 mm of error each: less than 4.3 mm apart.
    expect(told({ heightMm: 300 }, { heightMm: 304 }).text).toBe(
      'Best so far: try 2, 30.4 cm. The best before it: 30.0 cm. That is closer than the ruler can tell.',
    );
    expect(told({ heightMm: 300 }, { heightMm: 305 }).text).not.toMatch(/ruler/);
  });

  it('says when the ruler cannot tell points that go in steps', () => {
    const inPoints = (...heights: readonly number[]): string => {
      const record = withTries(heights.map((heightMm) => ({ heightMm })));
      const first = { by: 'points', better: 'more', roundTo: 1 } as const;
      const challenges = record.challenges.map((one) => ({ ...one, ranking: { first, tieBreaks: [] } }));
      const { scene, lines } = staged({ ...record, challenges }, CHALLENGE);
      const line = lines.find(({ group }) => group === GROUP);
      return line === undefined ? '' : progressText(progressOf(line, scene.challenge), scene);
    };
    // A point for each whole cm: 349 and 351 mm are 34 and 35 points, and the ruler cannot tell them apart.
    expect(inPoints(349, 351)).toMatch(/35 points\. .* 34 points\. That is closer than the ruler can tell\.$/);
    expect(inPoints(342, 358)).not.toMatch(/ruler/);
  });

  it('keeps the first try as the best while none is better', () => {
    expect(told({ heightMm: 349 }, { heightMm: 349 }).text).toBe('The first try is the best so far: 34.9 cm.');
    expect(told({ heightMm: 349 }).text).toBe('One try: 34.9 cm.');
  });

  it('leaves out tries that fell and tries that nobody has confirmed, and says so', () => {
    const { text, tries } = told({ heightMm: 380, fell: true }, { heightMm: 349 }, { heightMm: 400, open: true });
    expect(text).toBe('The only try that counts is try 2: 34.9 cm.');
    expect(tries).toEqual([
      'Try 1: Fell after 4 seconds.',
      'Try 2: 34.9 cm',
      'Try 3: Not confirmed yet: nobody has seen the real build since the last change.',
    ]);
    expect(told({ heightMm: 380, fell: true }).text).toBe('No try counts yet.');
    expect(told().text).toBe('No try counts yet.');
  });
});
