// What the pages ask the worker, and what it answers. Plain data both ways.

import type { Attempt, Challenge, ClassRecord, ClassScore, EngineIssue, Group, Report } from '@cairnmark/engine';
import type { Result, Stability, Tilt, WithoutPiece } from '@cairnmark/geometry';
import type { SupplyEvent } from '@cairnmark/scoring';
import type { StabilityOverlay } from '../scene/overlay-of.ts';
import type { Message, Question, WorkerClient } from './worker-client.ts';

/** One try with all that its report depends on. */
export interface Build {
  readonly attempt: Attempt;
  readonly challenge: Challenge;
  readonly group: Group;
  readonly events: readonly SupplyEvent[];
}

export interface Questions {
  readonly report: { readonly ask: Build; readonly answer: Result<Report, EngineIssue> };
  readonly score: { readonly ask: ClassRecord; readonly answer: Result<ClassScore, EngineIssue> };
  /** One answer a piece, in building order; null where it cannot be told. */
  readonly without: { readonly ask: Build; readonly answer: readonly (WithoutPiece | null)[] };
  /** Why it stands or falls, ready to draw, from the judgement of the same build; null: there is nothing to draw. */
  readonly overlay: {
    readonly ask: Build & { readonly stability: Stability };
    readonly answer: StabilityOverlay | null;
  };
  /** The tilt it bears with the table tilted down towards a direction, rad counter-clockwise from the right. */
  readonly tilt: { readonly ask: Build & { readonly towardsRad: number }; readonly answer: Tilt | null };
}

export type Topic = keyof Questions;
export type EngineClient = WorkerClient<Questions>;
export type EngineQuestion = Question<Questions>;
export type EngineMessage = Message<Questions>;
