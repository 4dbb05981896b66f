// Reads JSON text. Beside what JSON.parse tells, it gives the line and column of the first fault, and refuses what
// JSON.parse lets pass in silence: a key written twice (the last one would win), the key __proto__, and more values or a
// deeper nest than any of our files has. One pass over the text without recursion. Grammar: RFC 8259.

import type { Issue, Result } from '@cairnmark/geometry';
import { failure, success } from '@cairnmark/geometry';
import { DEPTH_MOST, VALUES_MOST } from './limits.ts';

export type JsonIssueCode = 'not-json' | 'duplicate-key' | 'unknown-key' | 'too-deep' | 'too-many-values';

/** The value that `text` writes down, or what is wrong with the text. Lines and columns count from 1. */
export function readJson(text: string): Result<unknown, Issue<JsonIssueCode>> {
  const walk = new JsonWalk(text);
  const stopped = walk.toTheEnd();
  if (stopped !== null) return failure([...walk.issues, stopped]);
  return walk.issues.length > 0 ? failure(walk.issues) : success(JSON.parse(text));
}

/** A list or an object that has been opened and not yet closed. */
interface Open {
  readonly closing: '}' | ']';
  /** Keys met so far; null in a list. */
  readonly keys: Set<string> | null;
  /** The key or the index of the value being read. */
  at: string | number;
}

class JsonWalk {
  readonly issues: Issue<JsonIssueCode>[] = [];
  private readonly text: string;
  private readonly open: Open[] = [];
  private readonly blank = /[ \t\n\r]*/y;
  private readonly scalar = /true|false|null|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
  private index = 0;
  private values = 0;

  constructor(text: string) {
    this.text = text;
  }

  /** Walks the whole text; what made it stop, or null. */
  toTheEnd(): Issue<JsonIssueCode> | null {
    for (;;) {
      // A value begins here.
      if (this.values++ === VALUES_MOST) return this.issue('too-many-values', { most: VALUES_MOST });
      this.pass(this.blank);
      const next = this.text[this.index];
      if (next === '{' || next === '[') {
        if (this.open.length === DEPTH_MOST) return this.issue('too-deep', { most: DEPTH_MOST });
        this.index += 1;
        this.open.push(next === '{' ? { closing: '}', keys: new Set(), at: '' } : { closing: ']', keys: null, at: 0 });
        this.pass(this.blank);
        if (this.text[this.index] !== this.top()?.closing) {
          if (!this.key()) return this.fault();
          continue;
        }
      } else if (next === '"' ? this.string() === null : !this.pass(this.scalar)) {
        return this.fault();
      }
      const ended = this.afterValue();
      if (ended !== 'next') return ended === 'end' ? null : this.fault();
    }
  }

  /** Closes what ends here; says whether another value follows. */
  private afterValue(): 'next' | 'end' | 'fault' {
    for (;;) {
      this.pass(this.blank);
      const top = this.top();
      if (top === undefined) return this.index === this.text.length ? 'end' : 'fault';
      const mark = this.text[this.index];
      if (mark === top.closing) {
        this.index += 1;
        this.open.pop();
        continue;
      }
      if (mark !== ',') return 'fault';
      this.index += 1;
      if (typeof top.at === 'number') top.at += 1;
      this.pass(this.blank);
      return this.key() ? 'next' : 'fault';
    }
  }

  /** In an object: reads a key and its colon. In a list there is nothing to read. */
  private key(): boolean {
    const top = this.top();
    if (top === undefined || top.keys === null) return true;
    const written = this.text[this.index] === '"' ? this.string() : null;
    if (written === null) return false;
    const key: string = JSON.parse(written);
    top.at = key;
    if (key === '__proto__') this.issues.push(this.issue('unknown-key', {}));
    if (top.keys.has(key)) this.issues.push(this.issue('duplicate-key', {}));
    top.keys.add(key);
    this.pass(this.blank);
    if (this.text[this.index] !== ':') return false;
    this.index += 1;
    return true;
  }

  /** The string that begins here, as written with its quotes; null when it is faulty, with the index at the fault. */
  private string(): string | null {
    const start = this.index;
    for (this.index += 1; ; this.index += 1) {
      const code = this.text.charCodeAt(this.index);
      if (code === 0x22) {
        this.index += 1;
        return this.text.slice(start, this.index);
      }
      // NaN stands for the end of the text; below 0x20 are the control characters.
      if (!(code >= 0x20)) return null;
      if (code === 0x5c && !this.escape()) return null;
    }
  }

  /** Moves to the last character of the escape that begins here. */
  private escape(): boolean {
    const sign = this.text[this.index + 1] ?? '';
    const four = sign === 'u' && /^[0-9a-fA-F]{4}$/.test(this.text.slice(this.index + 2, this.index + 6));
    if (four) this.index += 5;
    else if (sign !== '' && '"\\/bfnrt'.includes(sign)) this.index += 1;
    else return false;
    return true;
  }

  private pass(pattern: RegExp): boolean {
    pattern.lastIndex = this.index;
    const found = pattern.test(this.text);
    if (found) this.index = pattern.lastIndex;
    return found;
  }

  private top(): Open | undefined {
    return this.open[this.open.length - 1];
  }

  private issue(code: JsonIssueCode, details: Issue['details']): Issue<JsonIssueCode> {
    return { code, path: this.open.map((open) => open.at), details };
  }

  private fault(): Issue<JsonIssueCode> {
    const before = this.text.slice(0, this.index);
    const line = before.split('\n').length;
    return { code: 'not-json', path: [], details: { line, column: this.index - before.lastIndexOf('\n') } };
  }
}
