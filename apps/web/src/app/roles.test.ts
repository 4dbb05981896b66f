import { expect, it } from 'vitest';
import { ROLES } from '../store/device.ts';
import { asksPin, may, tabsOf } from './roles.ts';

it('only the teacher plans, decides and freezes', () => {
  for (const path of ['/challenge', '/fair'] as const) {
    expect(ROLES.filter((role) => tabsOf(role).includes(path))).toEqual(['teacher']);
  }
  expect(ROLES.filter((role) => may(role, 'decide'))).toEqual(['teacher']);
});

it('a measurer confirms, a judge gives marks, and pupils do neither', () => {
  expect(ROLES.filter((role) => may(role, 'confirm'))).toEqual(['measurer', 'teacher']);
  expect(ROLES.filter((role) => may(role, 'judge'))).toEqual(['judge', 'teacher']);
});

it('everybody sees the Score card and the Board', () => {
  for (const role of ROLES) expect(tabsOf(role)).toEqual(expect.arrayContaining(['/score', '/board']));
});

it('a PIN is asked for on the way up, not on the way to the pupils', () => {
  const asked = ROLES.flatMap((now) => ROLES.filter((next) => asksPin(now, next)).map((next) => `${now} ${next}`));
  expect(asked).toEqual([
    'pupil measurer',
    'pupil judge',
    'pupil teacher',
    'measurer judge',
    'measurer teacher',
    'judge measurer',
    'judge teacher',
  ]);
});
