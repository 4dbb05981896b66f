// Which height counts, with which tolerance, and what a decision changes. Rulers: u = step / root 12, doubled.

import type { Fact, MeasureId } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { attempt, challenge, group } from '../../../../tests/reference/small-class.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import type { Challenge, Decision, Observed } from '../types.ts';
import { measuredFact } from './measured.ts';

const EVERY = challenge({ heightCounts: ['ruler', 'photo', 'model'] });
const working = { method: 'highest-point', steps: [], parts: [] } as const;
const MODEL: Fact = { status: 'measured', id: 'height', value: 405, unit: 'mm', tolerance: 1.4, errors: {}, working };
const NO_MODEL: Fact = { status: 'not-measured', id: 'height', unit: 'mm', reason: 'no-layout' };

function heightOf(observed: Observed, one: Challenge = EVERY, predicted: Fact = MODEL, decisions: Decision[] = []) {
  return measuredFact(predicted, attempt({ observed, decisions }), one, group('terns'));
}

function decision(value: number, more: Partial<Decision> = {}): Decision {
  return { measure: 'height', value, by: 'teacher', reason: 'read again', at: '2026-03-05T10:50:00+01:00', ...more };
}

const TAKEN_BACK = { takenBack: { at: '2026-03-05T10:55:00+01:00', reason: 'wrong group' } };

describe('which height counts', () => {
  it('the first that there is, in the order of the challenge', () => {
    const both = { heightReadingsMm: [412], photoHeightMm: 409 };
    const counts = (observed: Observed, ...heightCounts: Challenge['heightCounts']) => {
      const { value, source } = heightOf(observed, challenge({ heightCounts }));
      return [value, source];
    };
    expect(counts(both, 'ruler', 'photo', 'model')).toEqual([412, 'observed']);
    expect(counts(both, 'photo', 'ruler')).toEqual([409, 'observed']);
    expect(counts(both, 'model', 'ruler')).toEqual([405, 'predicted']);
    expect(counts({ heightReadingsMm: [], photoHeightMm: 409 }, 'ruler', 'photo', 'model')).toEqual([409, 'observed']);
    expect(counts({ heightReadingsMm: [] }, 'ruler', 'photo', 'model')).toEqual([405, 'predicted']);
    expect(counts({ heightReadingsMm: [] }, 'ruler')).toEqual([null, null]);
  });

  it('where none of them is there, the height is not measured', () => {
    const fact = heightOf({ heightReadingsMm: [] }, EVERY, NO_MODEL);
    expect(fact).toMatchObject({ value: null, tolerance: 0, source: null, observed: null, predicted: NO_MODEL });
  });

  it('prediction and observation stand side by side, whichever counts', () => {
    const fact = heightOf({ heightReadingsMm: [412] }, challenge({ heightCounts: ['model'] }));
    expect(fact).toMatchObject({ value: 405, tolerance: 1.4, predicted: MODEL });
    expect(fact.observed).toEqual({ value: 412, tolerance: 3, readings: [412] });
    const photo = heightOf({ heightReadingsMm: [412], photoHeightMm: 409 }, challenge({ heightCounts: ['photo'] }));
    expect(photo.observed).toEqual({ value: 409, tolerance: 3, readings: [] });
  });

  it('an observed height belongs to the height alone', () => {
    const area: Fact = { ...MODEL, id: 'base-area', unit: 'mm2' };
    expect(heightOf({ heightReadingsMm: [412] }, EVERY, area)).toMatchObject({ value: 405, observed: null });
  });
});

describe('readings of the ruler', () => {
  const readings = (...heightReadingsMm: number[]) => heightOf({ heightReadingsMm });

  it('one reading never claims more than the divisions of its ruler: whole inches leave 2 x 25.4 / root 12 open', () => {
    const { tolerance } = heightOf({ heightReadingsMm: [139] }, challenge({ ruler: 'inch', measuringErrorMm: 3 }));
    expectNear(tolerance, 25.4 / Math.sqrt(3), { relative: 1e-12 });
  });

  it('one reading carries the error that the challenge states', () => {
    expect(readings(412)).toMatchObject({ value: 412, tolerance: 3 });
  });

  it('several count with their mean and half their range', () => {
    expect(readings(410, 412, 417)).toMatchObject({ value: 413, tolerance: 3.5 });
    expect(readings(417, 410, 412)).toMatchObject({ value: 413, tolerance: 3.5 });
  });

  it('several that agree still carry what the ruler leaves open', () => {
    // u = 0.288675134595 mm for 1 mm (JCGM 100:2008, F.2.2.1, from memory; computed), doubled.
    expectNear(readings(412, 412).tolerance, 2 * 0.288675134595, { relative: 1e-11 });
    expectNear(readings(412, 413).tolerance, 2 * 0.288675134595, { relative: 1e-11 });
    const quarters = challenge({ ruler: 'quarter-inch' });
    expectNear(heightOf({ heightReadingsMm: [412, 412] }, quarters).tolerance, 2 * 1.83308710468, { relative: 1e-11 });
  });
});

describe('decisions', () => {
  it('a decision overrides, and the other values stay beside it', () => {
    const fact = heightOf({ heightReadingsMm: [412] }, EVERY, MODEL, [decision(399)]);
    expect(fact).toMatchObject({ value: 399, source: 'decided', predicted: MODEL, decided: decision(399) });
    expect(fact.observed?.value).toBe(412);
  });

  it('the last one that was not taken back counts', () => {
    const fact = (...decisions: Decision[]) => heightOf({ heightReadingsMm: [412] }, EVERY, MODEL, decisions);
    expect(fact(decision(399), decision(401)).value).toBe(401);
    expect(fact(decision(399), decision(401, TAKEN_BACK)).value).toBe(399);
    expect(fact(decision(399, TAKEN_BACK))).toMatchObject({ value: 412, source: 'observed', decided: null });
  });

  it('the last one is the latest by its moment, wherever it stands in the list', () => {
    const [early, late] = [
      decision(399, { at: '2026-03-05T11:50:00+02:00' }),
      decision(401, { at: '2026-03-05T09:55:00Z' }),
    ];
    const valueOf = (...decisions: Decision[]) => heightOf({ heightReadingsMm: [412] }, EVERY, MODEL, decisions).value;
    expect([valueOf(early, late), valueOf(late, early)]).toEqual([401, 401]);
  });

  it('a decision on another measure changes nothing here', () => {
    const other: MeasureId = 'volume';
    expect(heightOf({ heightReadingsMm: [412] }, EVERY, MODEL, [decision(7, { measure: other })]).value).toBe(412);
  });

  it('keeps the measuring error of the value that it replaces, or the one stated', () => {
    expect(heightOf({ heightReadingsMm: [410, 417] }, EVERY, MODEL, [decision(399)]).tolerance).toBe(3.5);
    expect(heightOf({ heightReadingsMm: [] }, EVERY, NO_MODEL, [decision(399)]).tolerance).toBe(3);
    const pieces: Fact = { status: 'not-measured', id: 'pieces', unit: 'count', reason: 'no-pieces-listed' };
    const decided = heightOf({ heightReadingsMm: [] }, EVERY, pieces, [decision(5, { measure: 'pieces' })]);
    expect(decided).toMatchObject({ value: 5, tolerance: 0, source: 'decided' });
  });
});
