// Named steps that bring a file of an older version up to the present one; the present version of a format follows from
// its steps. A step gets plain JSON and returns new plain JSON: what it does not find in its place it leaves as it is, for
// the schema to refuse.

import { BEST_SHOWN_STEPS } from './steps/best-shown.ts';
import { CRUSHED_STEPS } from './steps/crushed.ts';
import { FAIRNESS_STEPS } from './steps/fairness.ts';
import { ON_PHOTOS_STEPS } from './steps/on-photos.ts';
import { OPEN_RESULT_STEPS } from './steps/open-results.ts';
import { STABILITY_STEPS } from './steps/stability.ts';

/** What stands in a file beside `format` and `version`. */
export type Content = Readonly<Record<string, unknown>>;

/** Brings `format` from version `from` to `from` + 1. The name says what changed. */
export interface Step {
  readonly format: string;
  readonly from: number;
  readonly name: string;
  readonly up: (content: Content) => Content;
}

export const STEPS: readonly Step[] = [
  ...STABILITY_STEPS,
  ...FAIRNESS_STEPS,
  ...OPEN_RESULT_STEPS,
  ...CRUSHED_STEPS,
  ...ON_PHOTOS_STEPS,
  ...BEST_SHOWN_STEPS,
];

/** The version that is written today: one more than the steps that lead to it. */
export const presentVersion = (format: string, steps: readonly Step[]): number =>
  1 + steps.filter((step) => step.format === format).length;

/** `content` of an older version, brought up through every step after `version`, in order. */
export function bringUp(format: string, version: number, content: Content, steps: readonly Step[]): Content {
  return steps
    .filter((step) => step.format === format && step.from >= version)
    .sort((a, b) => a.from - b.from)
    .reduce((soFar, step) => step.up(soFar), content);
}
