// Reads JSON text. Beside what JSON.parse tells, it gives the line and column of the first fault, and refuses what
// JSON.parse lets pass in silence: a key written twice (the last one would win), the key __proto__, and more values, more
// keys or a deeper nest than any of our files has. One pass over the text without recursion. Grammar: RFC 8259.

import type { Issue, Result } from '@cairnmark/geometry';
import { failure, success } from '@cairnmark/geometry';
import { DEPTH_MOST, KEYS_MOST, VALUES_MOST } from './limits.ts';

export type JsonIssueCode =
  | 'not-json' // details: line, column, counted from 1
  | 'duplicate-key'
  | 'unknown-key'
  | 'too-deep' // details: most
  | 'too-many-keys' // details: most
  | 'too-many-values'; // details: most

type JsonIssue = Issue<JsonIssueCode>;

/** The value that `text` writes down, or what is wrong with the text. */
export function readJson(text: string): Result<unknown, JsonIssue> {
  const walk = new JsonWalk(text);
  let more = true;
  while (more) more = walk.pastNextValue();
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

/** Goes through a text value by value. Each method says whether a further value begins where it has come to. */
class JsonWalk {
  readonly issues: JsonIssue[] = [];
  private readonly text: string;
  private readonly open: Open[] = [];
  private readonly blanks = /[ \t\n\r]*/y;
  private readonly scalar = /true|false|null|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
  private index = 0;
  private values = 0;

  constructor(text: string) {
    this.text = text;
  }

  /** Past a string, number or word, or into a list or an object. */
  pastNextValue(): boolean {
    if (this.values === VALUES_MOST) return this.stop('too-many-values', { most: VALUES_MOST });
    this.values += 1;
    this.pass(this.blanks);
    const mark = this.text[this.index];
    if (mark === '{' || mark === '[') return this.into(mark);
    const passed = mark === '"' ? this.string() !== null : this.pass(this.scalar);
    return passed ? this.pastEnds() : this.fault();
  }

  private into(mark: '{' | '['): boolean {
    if (this.open.length === DEPTH_MOST) return this.stop('too-deep', { most: DEPTH_MOST });
    this.index += 1;
    const opened: Open = mark === '{' ? { closing: '}', keys: new Set(), at: '' } : { closing: ']', keys: null, at: 0 };
    this.open.push(opened);
    this.pass(this.blanks);
    return this.text[this.index] === opened.closing ? this.pastEnds() : this.pastKey(opened);
  }

  /** After a value: past all that closes here, and past a comma. */
  private pastEnds(): boolean {
    for (;;) {
      this.pass(this.blanks);
      const innermost = this.open[this.open.length - 1];
      const mark = this.text[this.index];
      if (innermost === undefined) return mark === undefined ? false : this.fault();
      if (mark !== ',' && mark !== innermost.closing) return this.fault();
      this.index += 1;
      if (mark === ',') return this.pastComma(innermost);
      this.open.pop();
    }
  }

  private pastComma(innermost: Open): boolean {
    if (typeof innermost.at === 'number') innermost.at += 1;
    this.pass(this.blanks);
    return this.pastKey(innermost);
  }

  /** In an object: past a key and its colon. In a list there is nothing to pass. */
  private pastKey(innermost: Open): boolean {
    if (innermost.keys === null) return true;
    const written = this.text[this.index] === '"' ? this.string() : null;
    if (written === null) return this.fault();
    this.noteKey(JSON.parse(written), innermost, innermost.keys);
    if (innermost.keys.size > KEYS_MOST) return this.stop('too-many-keys', { most: KEYS_MOST });
    this.pass(this.blanks);
    if (this.text[this.index] !== ':') return this.fault();
    this.index += 1;
    return true;
  }

  private noteKey(key: string, innermost: Open, keys: Set<string>): void {
    innermost.at = key;
    if (key === '__proto__') this.tell('unknown-key', {});
    if (keys.has(key)) this.tell('duplicate-key', {});
    keys.add(key);
  }

  /** Past a string; as it is written, with its quotes. null when it is faulty, with the index at the fault. */
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

  /** To the last character of the escape that begins here. */
  private escape(): boolean {
    const sign = this.text[this.index + 1] ?? '';
    const hex = sign === 'u' && /^[0-9a-fA-F]{4}$/.test(this.text.slice(this.index + 2, this.index + 6));
    if (!hex && (sign === '' || !'"\\/bfnrt'.includes(sign))) return false;
    this.index += hex ? 5 : 1;
    return true;
  }

  private pass(pattern: RegExp): boolean {
    pattern.lastIndex = this.index;
    const found = pattern.test(this.text);
    if (found) this.index = pattern.lastIndex;
    return found;
  }

  private fault(): false {
    const before = this.text.slice(0, this.index);
    const [line, column] = [before.split('\n').length, this.index - before.lastIndexOf('\n')];
    this.issues.push({ code: 'not-json', path: [], details: { line, column } });
    return false;
  }

  private stop(code: JsonIssueCode, details: Issue['details']): false {
    this.tell(code, details);
    return false;
  }

  private tell(code: JsonIssueCode, details: Issue['details']): void {
    this.issues.push({ code, path: this.open.map(({ at }) => at), details });
  }
}
