import { describe, expect, it } from 'vitest';
import { answered, begun, failedBy, IDLE } from './worked.ts';

describe('what is known of a question', () => {
  it('is the last answer while the next is worked out', () => {
    const worked = begun(answered(IDLE, { ok: true, value: 7 }));
    expect(worked).toEqual({ ...IDLE, value: 7, working: true });
  });

  it('is that it was given up, with the answer before, which is of another question', () => {
    const before = begun(answered(IDLE, { ok: true, value: 7 }));
    expect(answered(before, null)).toEqual({ ...IDLE, value: 7, stopped: true });
    expect(begun(answered(before, null))).toEqual(before);
  });

  it('is the reasons of one that was refused, and that it failed of one that failed', () => {
    const issue = { code: 'overlaps', path: [], details: {} } as const;
    const refused = answered<number>(IDLE, { ok: false, issues: [issue] });
    expect(refused).toEqual({ ...IDLE, issues: [issue] });
    const failed = failedBy(begun(refused), new Error('broke'));
    expect(failed.failed).toBe('broke');
  });
});
