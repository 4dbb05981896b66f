// What every part of the Build screen is shown: whose build, in which words, edited how, with which report.

import type { Report } from '@cairnmark/engine';
import type { BuildWords } from '../../app/use-build-words.ts';
import type { At } from '../../store/session.ts';
import type { Worked } from '../../workers/use-engine.ts';
import type { Door } from './doors.tsx';
import type { Editor } from './use-editor.ts';

export interface Shown {
  readonly at: At;
  readonly words: BuildWords;
  readonly editor: Editor;
  readonly worked: Worked<Report>;
  readonly door: Door;
  /** px a mm of the small drawings: one for the whole kit. */
  readonly scale: number;
  /** Whether the reasons are drawn into the scene. */
  readonly why: boolean;
}
