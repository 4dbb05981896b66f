// What the photo worker answers.

import { CONTACT_MM, unionFacts } from '@cairnmark/geometry';
import { traceOutline } from '@cairnmark/photo';
import { fitPiece, TAP_SIGMA_PX } from '../photo/fit-piece.ts';
import { readPhoto } from '../photo/read-photo.ts';
import type { PhotoAnswer, PhotoQuestion } from './photo-questions.ts';
import type { Progress } from './worker-client.ts';

export async function photoAnswerTo(question: PhotoQuestion, progress: Progress): Promise<PhotoAnswer> {
  switch (question.topic) {
    case 'read':
      return readPhoto(question.ask, progress);
    case 'fit':
      return fitPiece(question.ask);
    case 'area':
      return { areaMm2: unionFacts(question.ask, { contactMm: CONTACT_MM, gapAllowanceMm: CONTACT_MM }).areaMm2 };
    case 'outline': {
      const { photo, camera, plane, taps } = question.ask;
      return traceOutline(photo, camera, plane, { pixels: taps, sigmaPx: TAP_SIGMA_PX });
    }
  }
}
