// What the door "Trace it" asks its worker: a file as a picture with the sheet found in it, where a tapped piece stands, and the
// outline of a shape that is not on the list.
// Plain data both ways.

import type { Outline, Result, Vec2 } from '@cairnmark/geometry';
import type { FittedCamera, FoundMarker, Photo, PhotoIssue, Sheet, TracedShape, TracingPlane } from '@cairnmark/photo';
import type { PhotoFault } from '@cairnmark/words';
import type { FitAnswer, FitAsk } from '../photo/fit-piece.ts';
import type { Message, Question, WorkerClient } from './worker-client.ts';

export interface ReadAsk {
  readonly file: Blob;
  readonly sheet: Sheet;
}

export interface ReadPhoto {
  /** The right way up, and as large as it is measured. */
  readonly photo: Photo;
  readonly markers: readonly FoundMarker[];
  /** Or why it cannot be measured by. */
  readonly camera: Result<FittedCamera, PhotoIssue>;
  /** A plain sheet looks the same from two sides: the camera if it was seen from the other one. */
  readonly halfTurned: FittedCamera | null;
  /** That it can be measured by, but not well: the sheet is not of its size, or of other paper. */
  readonly warning: PhotoIssue | null;
  /** What the picture as a whole suffers from, where the sheet is not found. */
  readonly fault: PhotoFault | null;
}

/** A file that never became a picture. */
export interface RefusedFile {
  readonly photo: null;
  readonly fault: PhotoFault;
  readonly details: Readonly<Record<string, number>>;
}

export interface OutlineAsk {
  readonly photo: Photo;
  readonly camera: FittedCamera;
  readonly plane: TracingPlane;
  readonly taps: readonly Vec2[];
}

export interface AreaAnswer {
  readonly areaMm2: number;
}

export type OutlineAnswer = Result<TracedShape, PhotoIssue>;

export interface PhotoQuestions {
  readonly read: { readonly ask: ReadAsk; readonly answer: ReadPhoto | RefusedFile };
  readonly fit: { readonly ask: FitAsk; readonly answer: FitAnswer };
  /** Area of all of them together seen from above, mm2. */
  readonly area: { readonly ask: readonly Outline[]; readonly answer: AreaAnswer };
  readonly outline: { readonly ask: OutlineAsk; readonly answer: OutlineAnswer };
}

export type PhotoClient = WorkerClient<PhotoQuestions>;
export type PhotoQuestion = Question<PhotoQuestions>;
export type PhotoMessage = Message<PhotoQuestions>;
export type PhotoAnswer = PhotoQuestions[keyof PhotoQuestions]['answer'];
