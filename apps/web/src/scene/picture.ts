// What the scene shows, as plain data. Everything is in the frame of the table, mm; every text comes ready to read.

import type { PlacedPiece } from '@cairnmark/geometry';
import type { RulerUnit } from '../drawing/ruler-marks.ts';
import type { StabilityOverlay } from './overlay-of.ts';

export interface ScenePicture {
  /** In any order; a piece that is being dragged is not among them but the ghost. */
  readonly pieces: readonly PlacedPiece[];
  /** `index` of the piece at work. */
  readonly picked: number | null;
  readonly ghost: Ghost | null;
  /** Why it stands or falls; null: not asked for. */
  readonly why: Why | null;
  /** What the ruler counts, and the size of a square. */
  readonly unit: RulerUnit;
  /** The height of the build, "40.0 cm", beside the ruler; null: no level line. */
  readonly heightText: string | null;
}

/** A piece where it would settle if it were let go now. */
export interface Ghost {
  readonly piece: PlacedPiece;
  /** True when it may not be put there. */
  readonly isRefused: boolean;
  /** At most four words beside it. */
  readonly label: string | null;
}

export interface Why {
  readonly overlay: StabilityOverlay;
  /** Names of the marks, at most four words each; null: none. They name the marks of each group of pieces that moves. */
  readonly labels: {
    readonly balance: string | null;
    readonly heldUp: string | null;
    readonly edge: string | null;
    /** Where it turns over one point. */
    readonly point: string | null;
  };
}
