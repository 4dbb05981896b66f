// Builds laid out on photos say so: gaps as wide as a photo is off count as closed in them. No build of an older file was.

import type { Step } from '../steps.ts';

export const ON_PHOTOS_STEPS: readonly Step[] = [
  { format: 'attempt', from: 3, name: 'laid-out-on-photos', up: (content) => content },
  { format: 'class', from: 4, name: 'tries-laid-out-on-photos', up: (content) => content },
];
