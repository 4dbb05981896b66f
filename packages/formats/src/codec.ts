// How one format is read from plain JSON content and written as text.

import type { EngineIssue } from '@cairnmark/engine';
import type { Issue, Result } from '@cairnmark/geometry';
import { failure, success } from '@cairnmark/geometry';
import type * as z from 'zod/mini';
import type { ShapeIssueCode } from './shape.ts';
import { shapeIssues } from './shape.ts';
import { presentVersion, STEPS } from './steps.ts';

/** What a file of ours begins its `format` with. */
export const MARK = 'cairnmark/';

export type RecordIssue = Issue<ShapeIssueCode> | EngineIssue;

export interface Codec<F extends string, R> {
  readonly schema: z.ZodMiniType<R>;
  /** The record that the content of a file holds, keys in the order of the schema. */
  readonly read: (content: unknown) => Result<{ readonly format: F; readonly value: R }, RecordIssue>;
  readonly write: (value: R) => string;
  /** What `read` would refuse of a record that a program made; [] where it can be written. */
  readonly faults: (value: R) => readonly RecordIssue[];
}

/** `meaning` finds what values of the right shape say that cannot be: it is asked only when every shape is right. */
export function codec<F extends string, R>(
  format: F,
  schema: z.ZodMiniType<R>,
  meaning: (value: R) => readonly EngineIssue[],
): Codec<F, R> {
  const read = (content: unknown): ReturnType<Codec<F, R>['read']> => {
    const parsed = schema.safeParse(content);
    if (!parsed.success) return failure(shapeIssues(parsed.error.issues, content));
    const issues = meaning(parsed.data);
    return issues.length > 0 ? failure(issues) : success({ format, value: parsed.data });
  };
  const write = (value: R): string => {
    const kept = read(value);
    if (!kept.ok) throw new RangeError(`not a ${format} that can be read back: ${JSON.stringify(kept.issues)}`);
    const file = { format: MARK + format, version: presentVersion(format, STEPS), ...kept.value.value };
    return `${JSON.stringify(file, null, 2)}\n`;
  };
  const faults = (value: R): readonly RecordIssue[] => {
    const kept = read(value);
    return kept.ok ? [] : kept.issues;
  };
  return { schema, read, write, faults };
}
