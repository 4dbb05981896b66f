// The worker of Fair points: a search may go on for seconds, and the page stays quick meanwhile. To stop it, the page ends the
// worker.

/// <reference lib="webworker" />
import { fairAnswerTo } from './fair-answers.ts';
import type { FairMessage, FairQuestion } from './fair-questions.ts';

declare const self: DedicatedWorkerGlobalScope;

self.onmessage = ({ data }: MessageEvent<FairQuestion>) => {
  const { number } = data;
  const tell = (message: FairMessage): void => self.postMessage(message);
  try {
    tell({ number, answer: fairAnswerTo(data, (done, most) => tell({ number, done, most })) });
  } catch (error) {
    tell({ number, failed: error instanceof Error ? error.message : String(error) });
  }
};
