// What a measure is: an id, a unit, and a function from the context of a build to a finding.
// A finding is a value with its working, or the reason why the layout does not show it. Lengths mm.

import type { Unit } from '../kernel/formula.ts';
import type { MeasureContext } from './context.ts';
import type { MeasureId, NotMeasuredReason, Working } from './types.ts';

export type Finding =
  | { readonly found: true; readonly value: number; readonly working: Working }
  | { readonly found: false; readonly reason: NotMeasuredReason };

/** One entry of the catalogue of measures. */
export interface MeasureDefinition {
  readonly id: MeasureId;
  readonly unit: Unit;
  readonly measure: (context: MeasureContext) => Finding;
}

/** Something that a layout shows, or the reason why it does not. */
export type Shown<T> =
  | { readonly shown: true; readonly value: T }
  | { readonly shown: false; readonly reason: NotMeasuredReason };

export const shown = <T>(value: T): Shown<T> => ({ shown: true, value });
export const notShown = (reason: NotMeasuredReason): Shown<never> => ({ shown: false, reason });

/** The finding that `find` makes of what is shown; the reason passes on where nothing is. */
export function findingOf<T>(source: Shown<T>, find: (value: T) => { value: number; working: Working }): Finding {
  return source.shown ? { found: true, ...find(source.value) } : { found: false, reason: source.reason };
}

/** A number that no formula of a school gives: the method is named, there are no lines to show. */
export function byMethod(value: number, method: Working['method']): { value: number; working: Working } {
  return { value, working: { method, steps: [], parts: [] } };
}
