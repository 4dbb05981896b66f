// Opening a class: the demo, a file, or one that this device kept. A file is opened whole or not at all.

import type { FileIssue } from '@cairnmark/formats';
import type { Language } from '@cairnmark/words';
import { screenWords } from '@cairnmark/words';
import type { ClassStorage, KeptClass } from '../../store/storage.ts';
import type { Opened } from './start.tsx';

export interface Refusal {
  readonly title: string;
  readonly sentences: readonly string[];
}

/** Faults told at once: nobody reads further. */
const TOLD_MOST = 5;

/** The demo as it comes; what was tried in it before is kept under its own entry. */
export async function openDemo(): Promise<Opened> {
  const { demoClass } = await import('@cairnmark/demo');
  return { ok: true, classId: freshId(), record: demoClass(), isKept: false };
}

export async function openFile(file: File, language: Language): Promise<Opened> {
  const { readClass } = await import('../../store/class-file.ts');
  const read = readClass(await file.text());
  if (read.ok) return { ok: true, classId: freshId(), record: read.value, isKept: false };
  const title = screenWords(language).say('start.file-refused', { file: file.name });
  return { ok: false, refusal: await refusalOf(title, read.issues, language) };
}

export async function openKept({ id }: KeptClass, storage: ClassStorage, language: Language): Promise<Opened> {
  const kept = await storage.open(id);
  if (kept?.ok) return { ok: true, classId: id, record: kept.value, isKept: true };
  const title = screenWords(language).say('start.kept-refused');
  return { ok: false, refusal: await refusalOf(title, kept?.issues ?? [], language) };
}

async function refusalOf(title: string, issues: readonly FileIssue[], language: Language): Promise<Refusal> {
  const { wordsFor } = await import('@cairnmark/words');
  const words = wordsFor(language);
  const told = issues.slice(0, TOLD_MOST).map((issue) => [words.place(issue.path), words.issue(issue)]);
  const sentences = told.map((parts) => parts.filter((part) => part !== '').join(': '));
  const more = issues.length - sentences.length;
  return {
    title,
    sentences: more > 0 ? [...sentences, screenWords(language).say('start.file-more', { count: more })] : sentences,
  };
}

const freshId = (): string => crypto.randomUUID();
