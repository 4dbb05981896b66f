// The worker: all scoring happens here, so that a large fort never holds up a finger on the page. One question at a time;
// to cancel, the page ends the worker.

/// <reference lib="webworker" />
import { rememberedReports } from '@cairnmark/engine';
import type { LinearSolver } from '@cairnmark/geometry';
import { rememberedTabPaper } from '@cairnmark/nets';
import { answerTo } from './answers.ts';
import { loadSolver } from './load-solver.ts';
import type { EngineMessage, EngineQuestion } from './questions.ts';

declare const self: DedicatedWorkerGlobalScope;

const solver = once(loadSolver);
const evaluator = rememberedReports();
const tabsOf = rememberedTabPaper();

self.onmessage = ({ data }: MessageEvent<EngineQuestion>) => {
  const tell = (message: EngineMessage): void => self.postMessage(message);
  const progress = (done: number, most: number): void => tell({ number: data.number, done, most });
  answerTo(data, { solver, evaluator, progress, tabsOf }).then(
    (answer) => tell({ number: data.number, answer }),
    (error: unknown) => tell({ number: data.number, failed: error instanceof Error ? error.message : String(error) }),
  );
};

/** Asks once and hands the same answer to all who come after. Without a network there is none, and the next one asks again. */
function once(ask: () => Promise<LinearSolver>): () => Promise<LinearSolver | null> {
  let asked: Promise<LinearSolver | null> | null = null;
  return () => {
    asked ??= ask().catch(() => {
      asked = null;
      return null;
    });
    return asked;
  };
}
