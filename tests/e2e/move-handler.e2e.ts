// A dragged piece follows the pointer: what a move of the pointer takes over a build of thirty pieces. The target is 8 ms a
// move; here four times as much passes, for other machines and for what else they do. `npm run bench -- web` measures.

import { expect, it } from 'vitest';
import { median } from '../bench/measure.ts';
import { openClass } from './tools/classes.ts';
import { dragOverBuild, noteMoves, wallClass } from './tools/move-times.ts';
import { openApp } from './tools/open-app.ts';

const TARGET_MS = 8;
const ALLOWED = 4;
const DRAGS = 5;

it(`a move over 30 pieces takes no more than ${ALLOWED} times ${TARGET_MS} ms, median of ${DRAGS} drags`, async () => {
  const page = await openApp({ before: noteMoves });
  await openClass(page, wallClass(30));
  const drags: number[] = [];
  for (let k = 0; k < DRAGS; k += 1) drags.push(median((await dragOverBuild(page, 12)).handlersMs));
  expect(median(drags)).toBeGreaterThan(0);
  expect(median(drags)).toBeLessThanOrEqual(ALLOWED * TARGET_MS);
});
