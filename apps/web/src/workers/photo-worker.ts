// The worker of the door "Trace it": opening a photo and finding the sheet in it takes a second, and the page stays quick.

/// <reference lib="webworker" />
import { photoAnswerTo } from './photo-answers.ts';
import type { PhotoAnswer, PhotoMessage, PhotoQuestion } from './photo-questions.ts';

declare const self: DedicatedWorkerGlobalScope;

self.onmessage = ({ data }: MessageEvent<PhotoQuestion>) => {
  const { number } = data;
  const tell = (message: PhotoMessage, handed: Transferable[] = []): void => self.postMessage(message, handed);
  photoAnswerTo(data, (done, most) => tell({ number, done, most })).then(
    (answer) => tell({ number, answer }, pixelsOf(answer)),
    (error: unknown) => tell({ number, failed: error instanceof Error ? error.message : String(error) }),
  );
};

/** Handed over rather than copied: eight million bytes. */
const pixelsOf = (answer: PhotoAnswer): Transferable[] =>
  'photo' in answer && answer.photo !== null ? [answer.photo.data.buffer] : [];
