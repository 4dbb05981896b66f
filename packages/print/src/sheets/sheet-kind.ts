// One kind of sheet: who reads it, how many copies a class needs, and what stands on it.

import type { Block } from '../flow/blocks.ts';
import type { TextSize } from '../flow/sizes.ts';
import type { SheetContext } from './context.ts';

export type SheetId =
  | 'measure-young'
  | 'measure-older'
  | 'measure-own'
  | 'answer-key'
  | 'rules'
  | 'game'
  | 'roles'
  | 'rubric'
  | 'record'
  | 'record-pieces'
  | 'results'
  | 'materials'
  | 'lesson-plan'
  | 'riddle'
  | 'riddle-key'
  | 'reflection'
  | 'table-cards';

/** What one copy is for. */
export type CopyFor = 'class' | 'group' | 'pair' | 'pupil';

/** What a class must have before the sheet says anything; marks: something that a person marks, or says yes or no to. */
export type SheetNeed = 'supply-game' | 'table-cards' | 'marks';

export interface SheetKind {
  readonly id: SheetId;
  readonly reader: 'pupils' | 'teacher';
  readonly copyFor: CopyFor;
  readonly needs: SheetNeed | null;
  /** Pages in usual print; more are refused. */
  readonly mostPages: (context: SheetContext) => number;
  /**
   * Sizes of its text, the largest first: the first with which it needs one page is taken. 'body' unless told, and in
   * large print.
   */
  readonly sizes?: readonly TextSize[];
  /** `size`: of its text. */
  readonly blocks: (context: SheetContext, size: TextSize) => readonly Block[];
}
