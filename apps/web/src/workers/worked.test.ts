import { describe, expect, it } from 'vitest';
import { answered, begun, failedBy, IDLE, isStopped } from './worked.ts';

describe('what is known of a question', () => {
  it('is the last answer while the next is worked out', () => {
    const worked = begun(answered({ ok: true, value: 7 }));
    expect(worked).toEqual({ ...IDLE, value: 7, working: true });
    expect(isStopped(worked)).toBe(false);
  });

  it('is nothing of a question that was given up: the value before was of another build', () => {
    const stopped = answered<number>(null);
    expect(stopped.value).toBeNull();
    expect(isStopped(stopped)).toBe(true);
  });

  it('is the reasons of one that was refused, and that it failed of one that failed', () => {
    const issue = { code: 'overlaps', path: [], details: {} } as const;
    const refused = answered<number>({ ok: false, issues: [issue] });
    expect(refused).toEqual({ ...IDLE, issues: [issue] });
    const failed = failedBy(begun(refused), new Error('broke'));
    expect(failed.failed).toBe('broke');
    expect([refused, failed].map(isStopped)).toEqual([false, false]);
  });
});
