// Turns what the schema library found wrong into our issues. The value in question is looked up in the file, since the
// library tells what it expected and not what it met.

import type { Issue } from '@cairnmark/geometry';
import type * as z from 'zod/mini';
import { NAME_CHARACTERS_MOST } from './limits.ts';
import { ID_PATTERN, MEASURE_PATTERN, TEXT_PATTERN } from './schemas/fields.ts';

export type ShapeIssueCode =
  | 'missing'
  | 'unknown-key'
  | 'wrong-type' // details: expected, received
  | 'not-one-of' // details: allowed (names parted by a comma and a blank), received
  | 'not-finite'
  | 'not-whole'
  | 'too-small' // details: least, or moreThan
  | 'too-large' // details: most
  | 'too-few' // details: least
  | 'too-many' // details: most
  | 'empty'
  | 'too-long' // details: most
  | 'not-an-id'
  | 'not-a-time'
  | 'control-character';

type Path = Issue['path'];
type ShapeIssue = Issue<ShapeIssueCode>;

/** `found` about `content`, one issue a fault, in the order of the schema. */
export function shapeIssues(found: readonly z.core.$ZodIssue[], content: unknown): ShapeIssue[] {
  return found.flatMap((fault) => issuesOf(fault, pathOf(fault), content));
}

function issuesOf(fault: z.core.$ZodIssue, path: Path, content: unknown): ShapeIssue[] {
  const value = valueAt(content, path);
  const one = (code: ShapeIssueCode, details: Issue['details'] = {}): ShapeIssue[] => [{ code, path, details }];
  if (value === undefined) return one('missing');
  switch (fault.code) {
    case 'invalid_type':
      if (typeof value === 'number' && !Number.isFinite(value)) return one('not-finite');
      if (typeof value === 'number' && fault.expected === 'int') return one('not-whole');
      return one('wrong-type', { expected: JSON_TYPES[fault.expected] ?? fault.expected, received: typeName(value) });
    case 'invalid_value':
      return one('not-one-of', { allowed: fault.values.join(', '), received: shown(value) });
    case 'invalid_union':
      return one('not-one-of', { allowed: allowedTags(fault).join(', '), received: shown(value) });
    case 'too_small':
      return one(...tooSmall(fault));
    case 'too_big':
      return one(...tooBig(fault));
    case 'invalid_format':
      return one(FORMAT_CODES[fault.pattern ?? ''] ?? 'not-a-time');
    case 'invalid_key':
      return fault.issues.flatMap((inner) => issuesOf(inner, path, content));
    case 'unrecognized_keys':
      return fault.keys.map((key) => ({ code: 'unknown-key', path: [...path, key], details: {} }));
    default:
      throw new RangeError(`no schema of ours finds ${fault.code}`);
  }
}

/** What the schema library calls a type, where JSON calls it otherwise. */
const JSON_TYPES: Readonly<Record<string, string>> = { int: 'number', record: 'object', tuple: 'array' };

const FORMAT_CODES: Readonly<Record<string, ShapeIssueCode>> = {
  [String(ID_PATTERN)]: 'not-an-id',
  [String(MEASURE_PATTERN)]: 'not-an-id',
  [String(TEXT_PATTERN)]: 'control-character',
};

function tooSmall(fault: z.core.$ZodIssueTooSmall): [ShapeIssueCode, Issue['details']] {
  const least = Number(fault.minimum);
  if (fault.origin === 'string') return ['empty', {}];
  if (fault.origin === 'array') return ['too-few', { least }];
  return ['too-small', fault.inclusive === false ? { moreThan: least } : { least }];
}

function tooBig(fault: z.core.$ZodIssueTooBig): [ShapeIssueCode, Issue['details']] {
  const code = fault.origin === 'string' ? 'too-long' : fault.origin === 'array' ? 'too-many' : 'too-large';
  return [code, { most: Number(fault.maximum) }];
}

function allowedTags(fault: z.core.$ZodIssueInvalidUnion): readonly unknown[] {
  return 'options' in fault ? fault.options : [];
}

function pathOf(fault: z.core.$ZodIssue): Path {
  return fault.path.map((key) => (typeof key === 'number' ? key : String(key)));
}

function valueAt(content: unknown, path: Path): unknown {
  let value = content;
  for (const key of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = Reflect.get(value, key);
  }
  return value;
}

const typeName = (value: unknown): string => (value === null ? 'null' : Array.isArray(value) ? 'array' : typeof value);

/** A short value as it is; of a long or a nested one its type. */
function shown(value: unknown): string {
  const short =
    typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean' ? String(value) : '';
  return short === '' || short.length > NAME_CHARACTERS_MOST ? typeName(value) : short;
}
