import { demoClass } from '@cairnmark/demo';
import { expect, it } from 'vitest';
import { DEMO_SIZE } from './demo-size.ts';

it('the first screen tells the size of the demo class as it is', () => {
  const { groups, challenges } = demoClass();
  expect(DEMO_SIZE).toEqual({ groups: groups.length, challenges: challenges.length });
});
