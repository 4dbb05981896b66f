// Opening a class: the demo, a file, or one that this device kept. A file is opened whole or not at all.

import type { ClassRecord } from '@cairnmark/engine';
import type { FileIssue } from '@cairnmark/formats';
import type { Language } from '@cairnmark/words';
import { loadScreenWords } from '@cairnmark/words';
import { freshId } from '../../store/fresh-id.ts';
import type { ClassStorage, KeptClass } from '../../store/storage.ts';
import type { Refusal } from './refusal.ts';

/** A class that was opened, or why it was not. */
export type Opened =
  | { readonly ok: true; readonly classId: string; readonly record: ClassRecord; readonly isKept: boolean }
  | { readonly ok: false; readonly refusal: Refusal };

/** The demo as it comes; what was tried in it before is kept under its own entry. */
export async function openDemo(device: Device): Promise<Opened> {
  const { demoClass } = await import('@cairnmark/demo');
  return untouchedOr(demoClass(device.language), device);
}

/** The demo with a group more that has built nothing yet, and is the first at work: an empty table and its kit. */
export async function openFirst(name: string, device: Device): Promise<Opened> {
  const { demoClass } = await import('@cairnmark/demo');
  const demo = demoClass(device.language);
  const group = { id: 'our-group', name, measured: {} };
  return untouchedOr({ ...demo, groups: [group, ...demo.groups] }, device);
}

/** Opened again and again only to look round, the demo is kept once. */
async function untouchedOr(record: ClassRecord, { kept, storage, language }: Device): Promise<Opened> {
  const { writeClass } = await import('../../store/class-file.ts');
  const asNew = writeClass(record);
  const alike = kept.filter(({ name, groups }) => name === record.name && groups === record.groups.length);
  for (const one of alike) {
    const opened = await openKept(one, storage, language);
    if (opened.ok && writeClass(opened.record) === asNew) return opened;
  }
  return { ok: true, classId: freshId(), record, isKept: false };
}

/** What this device keeps, and how it is read. */
export interface Device {
  readonly kept: readonly KeptClass[];
  readonly storage: ClassStorage;
  readonly language: Language;
}

export async function openFile(file: File, language: Language): Promise<Opened> {
  const { readClass } = await import('../../store/class-file.ts');
  const { say } = await loadScreenWords(language);
  const title = say('start.file-refused', { file: file.name });
  // Moved or changed since it was chosen.
  const text = await file.text().catch(() => null);
  if (text === null) return { ok: false, refusal: { title, sentences: [say('start.file-gone')] } };
  const read = readClass(text);
  if (read.ok) return { ok: true, classId: freshId(), record: read.value, isKept: false };
  return refused(title, read.issues, language);
}

export async function openKept({ id }: KeptClass, storage: ClassStorage, language: Language): Promise<Opened> {
  const kept = await storage.open(id);
  if (kept?.ok) return { ok: true, classId: id, record: kept.value, isKept: true };
  const { say } = await loadScreenWords(language);
  return refused(say('start.kept-refused'), kept?.issues ?? [], language);
}

/** The words about files come with a file that needs them. */
async function refused(title: string, issues: readonly FileIssue[], language: Language): Promise<Opened> {
  const { refusalOf } = await import('./refusal.ts');
  return { ok: false, refusal: await refusalOf(title, issues, language) };
}
