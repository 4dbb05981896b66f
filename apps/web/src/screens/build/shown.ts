// What every part of the Build screen is shown: whose build, in which words, edited how, with which report.

import type { Pieces } from '@cairnmark/editing';
import type { Report } from '@cairnmark/engine';
import type { BuildWords } from '../../app/use-build-words.ts';
import type { At } from '../../store/where-at.ts';
import type { Worked } from '../../workers/worked.ts';
import type { Door } from './doors.tsx';
import type { Editor } from './use-editor.ts';

export interface Carry {
  readonly kind: string;
  readonly from: readonly [clientX: number, clientY: number];
  readonly pointerId: number;
}

export interface Shown {
  readonly at: At;
  readonly words: BuildWords;
  readonly editor: Editor;
  readonly worked: Worked<Report>;
  readonly door: Door;
  /** px a mm of the small drawings: one for the whole kit. */
  readonly scale: number;
  /** A piece on its way from the shelf to the scene. */
  readonly carry: Carry | null;
  readonly setCarry: (carry: Carry | null) => void;
  /** The build as it would be if a dragged piece were let go now, for the live numbers; null: nothing is dragged. */
  readonly preview: (pieces: Pieces | null) => void;
  /** Whether a piece is on its way, so that what is shown is not the build as it stands. */
  readonly dragging: boolean;
  /** Whether one sentence stands at each part, saying what it is for. */
  readonly help: boolean;
  /** Whether the reasons are drawn into the scene. */
  readonly why: boolean;
}
