// What every part of the door is shown.

import type { Bench } from '@cairnmark/editing';
import type { FittedCamera, Photo } from '@cairnmark/photo';
import type { BuildWords } from '../../app/use-build-words.ts';
import type { At } from '../../store/where-at.ts';
import type { Stood } from './heights.ts';
import type { TracingAtWork } from './use-tracing.ts';

interface Usable {
  readonly photo: Photo;
  readonly camera: FittedCamera;
  /** That of a plain sheet which was seen from its other side. */
  readonly halfTurned: FittedCamera | null;
}

export interface TraceShown extends TracingAtWork {
  readonly at: At;
  readonly words: BuildWords;
  readonly bench: Bench;
  /** px a mm of the small drawings. */
  readonly scale: number;
  readonly above: Usable | null;
  readonly side: Usable | null;
  /** The pieces traced so far, where they come to lie. */
  readonly stood: readonly Stood[];
  /** The piece in hand on top of them; null: not placed yet. */
  readonly hand: Stood | null;
}
