// An issue as a line: the place, then what is wrong and how to mend it. Numbers get the unit that the file is written in,
// which its keys end with: mm, rad, g, g/m², g/cm³, s.

import type { Issue } from '@cairnmark/geometry';
import type { Catalogue } from './catalogue.ts';
import type { IssueVariant } from './keys.ts';
import { trimmed } from './numbers.ts';
import type { Filling } from './say.ts';
import { fill } from './say.ts';

/** "attempts 3, layout, pieces 2, turnRad: Here stands a text. Write a number." The place is left out where it is the whole file. */
export function issueSentence(issue: Issue, words: Catalogue): string {
  const place = placeText(issue.path);
  const sentence = fill(textFor(issue, words.issues), fillings(issue, words));
  return place === '' ? sentence : `${place}: ${sentence}`;
}

/** Keys as they stand in the file; positions in a list count from 1, as people do. */
export function placeText(path: Issue['path']): string {
  let text = '';
  for (const key of path) {
    if (typeof key === 'number') text += ` ${key + 1}`;
    else text += text === '' ? key : `, ${key}`;
  }
  return text.trim();
}

/** A code of a later program, which has no sentence here, stands for itself. */
function textFor({ code, details }: Issue, texts: Readonly<Record<string, string>>): string {
  return texts[variantOf(code, Object.keys(details)) ?? code] ?? code;
}

const variantOf = (code: string, told: readonly string[]): IssueVariant | null =>
  code === 'too-small' && told.includes('moreThan') ? 'not-above' : null;

function fillings({ path, details }: Issue, { names, decimalMark }: Catalogue): Readonly<Record<string, Filling>> {
  const field = path.filter((key) => typeof key === 'string').at(-1) ?? '';
  const word = (key: string, value: Filling): Filling => {
    if (key === 'other' && typeof value === 'number') return value + 1;
    if (typeof value === 'number') return numberText(value, LIMITS.has(key) ? field : key, decimalMark);
    return key === 'expected' || key === 'received' ? (lookUp(names.jsonTypes, value) ?? value) : value;
  };
  return Object.fromEntries(Object.entries(details).map(([key, value]) => [key, word(key, value)]));
}

/** Details that are in the unit of the field in the file; the others have a unit of their own. */
const LIMITS: ReadonlySet<string> = new Set(['least', 'most', 'moreThan', 'value']);

const UNITS: readonly (readonly [RegExp, string])[] = [
  [/Mm$/, ' mm'],
  [/Rad$/, ' rad'],
  [/massG$/, ' g'],
  [/gramsPerM2$/, ' g/m²'],
  [/GPerCm3$/, ' g/cm³'],
  [/[sS]econds$/, ' s'],
];

function numberText(value: number, field: string, mark: string): string {
  if (!Number.isFinite(value)) return String(value);
  const [, unit = ''] = UNITS.find(([ending]) => ending.test(field)) ?? [];
  return `${trimmed(value, 0, 3, mark)}${unit}`;
}

/** The word for a key that may be none of the table. */
export function lookUp(table: Readonly<Record<string, string>>, key: string): string | undefined {
  return Object.hasOwn(table, key) ? table[key] : undefined;
}
