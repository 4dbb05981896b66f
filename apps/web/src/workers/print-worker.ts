// The worker of the Print screen: laying nets on paper takes seconds, and the page stays quick meanwhile.

/// <reference lib="webworker" />
import { printAnswerTo } from './print-answers.ts';
import type { PrintMessage, PrintQuestion } from './print-questions.ts';

declare const self: DedicatedWorkerGlobalScope;

self.onmessage = ({ data }: MessageEvent<PrintQuestion>) => {
  const { number } = data;
  const tell = (message: PrintMessage): void => self.postMessage(message);
  printAnswerTo(data, (done, most) => tell({ number, done, most })).then(
    (answer) => tell({ number, answer }),
    (error: unknown) => tell({ number, failed: error instanceof Error ? error.message : String(error) }),
  );
};
