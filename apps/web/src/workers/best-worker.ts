// The worker that looks for the best possible build: large kits take seconds, and the page stays quick meanwhile. To stop it,
// the page ends the worker.

/// <reference lib="webworker" />
import { bestAnswerTo } from './best-answers.ts';
import type { BestMessage, BestQuestion } from './best-questions.ts';

declare const self: DedicatedWorkerGlobalScope;

self.onmessage = ({ data }: MessageEvent<BestQuestion>) => {
  const { number, ask } = data;
  const tell = (message: BestMessage): void => self.postMessage(message);
  try {
    tell({ number, answer: bestAnswerTo(ask, (done, most) => tell({ number, done, most })) });
  } catch (error) {
    tell({ number, failed: error instanceof Error ? error.message : String(error) });
  }
};
