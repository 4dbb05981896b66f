// The worker: all scoring happens here, so that a large fort never holds up a finger on the page. One question at a time;
// to cancel, the page ends the worker.

/// <reference lib="webworker" />
import { answerTo } from './answers.ts';
import type { Message, Question } from './questions.ts';

declare const self: DedicatedWorkerGlobalScope;

self.onmessage = ({ data }: MessageEvent<Question>) => {
  const tell = (message: Message): void => self.postMessage(message);
  const solved = (done: number, most: number): void => tell({ number: data.number, solved: done, most });
  answerTo(data, solved).then(
    (answer) => tell({ number: data.number, answer }),
    (error: unknown) => tell({ number: data.number, failed: error instanceof Error ? error.message : String(error) }),
  );
};
