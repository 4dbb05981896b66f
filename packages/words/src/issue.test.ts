import type { Issue } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { english } from './en/index.ts';
import { spanish } from './es/index.ts';
import { issueSentence, placeText } from './issue.ts';
import type { IssueCode } from './keys.ts';

const en = (issue: Issue): string => issueSentence(issue, english);
const es = (issue: Issue): string => issueSentence(issue, spanish);

/** What each code tells, as the package that finds it says. A code without a line here is a type error. */
const DETAILS: Readonly<Record<IssueCode, Issue['details']>> = {
  'not-json': { line: 7, column: 3 },
  'duplicate-key': {},
  'too-deep': { most: 64 },
  'too-many-values': { most: 2_000_000 },
  'file-too-large': { characters: 21_000_000, most: 20_000_000 },
  'not-a-cairnmark-file': {},
  'format-unknown': { format: 'kite', allowed: 'kit, class' },
  'format-other': { expected: 'class', received: 'kit' },
  'version-newer': { version: 3, newest: 1 },
  'version-unknown': {},
  'more-issues': { count: 17 },
  'code-too-large': { bytes: 912, most: 800 },
  'code-of-others': {},
  'code-newer': { version: 3, newest: 1 },
  'code-misread': {},
  'code-not-ours': {},
  missing: {},
  'unknown-key': {},
  'wrong-type': { expected: 'number', received: 'string' },
  'not-one-of': { allowed: 'cm, mm', received: 'furlong' },
  'not-finite': {},
  'not-whole': {},
  'too-small': { least: 0 },
  'too-large': { most: 100 },
  'too-few': { least: 3 },
  'too-many': { most: 200 },
  'too-many-keys': { most: 200 },
  empty: {},
  'too-long': { most: 80 },
  'not-an-id': {},
  'not-a-time': {},
  'control-character': {},
  'size-missing': {},
  'size-unknown': {},
  'size-not-positive': { sizeMm: -3 },
  'size-not-finite': {},
  'size-too-large': { sizeMm: 12_000, mostMm: 10_000 },
  'size-too-small': { sizeMm: 0.05, leastMm: 0.1 },
  'size-given-twice': { first: 'radius' },
  'sides-not-whole': { sides: 5.5 },
  'sides-out-of-range': { sides: 13, fewest: 3, most: 12 },
  'triangle-impossible': {},
  'slant-too-short': { slantMm: 30, runMm: 35 },
  'frustum-upside-down': {},
  'kind-unknown': { kind: 'cube-7' },
  'resting-unknown': { kind: 'cone-7', resting: 'tip', known: 'base, side' },
  'position-not-finite': { value: 'NaN' },
  'position-too-far': { valueMm: 20_000, limitMm: 10_000 },
  overlaps: { other: 2, depthMm: 7.25 },
  'mass-not-positive': { massG: -2 },
  'centre-outside-piece': { centreMm: 75, leastMm: 0, mostMm: 70 },
  'too-many-pieces': { count: 6000, limit: 5000 },
  'id-twice': { id: 'terns' },
  'group-unknown': { group: 'owls' },
  'challenge-unknown': { challenge: 'wide-light' },
  'criterion-unknown': { criterion: 'charm' },
  'requirement-unknown': { requirement: 'no-glue' },
  'measure-unknown': { measure: 'weight' },
  'height-source-missing': {},
  'number-out-of-range': { value: -1, least: 0, most: 4 },
  'cap-below-floor': { cap: 3, floor: 5 },
  'surface-unknown': { surface: 'felt' },
  'friction-twice': { first: 'paper', second: 'table' },
  'supply-not-played': { challenge: 'tall-light' },
  'supply-missing': {},
  'kinds-missing': {},
  'own-twice': { measure: 'volume' },
  'stock-exceeded': { piece: 'cube-7', count: 5, left: 3 },
  'more-than-the-group-has': { piece: 'cube-7', count: 5, has: 3 },
  'mark-twice': { judge: 'Ms Reid', criterion: 'idea' },
};

const ALL = Object.entries(DETAILS).map(([code, details]): Issue => ({ code, path: ['attempts', 2, 'at'], details }));

describe('every issue', () => {
  it('has a sentence in both languages that tells all it was told, with nothing left open', () => {
    for (const issue of ALL) {
      const sentences = [en(issue), es(issue)];
      for (const sentence of sentences) {
        expect(sentence).toMatch(/^attempts 3, at: \S.*[.?]$/);
        expect(sentence).not.toMatch(/[{}]| \?|undefined|NaN mm/);
        for (const value of Object.values(issue.details)) {
          if (typeof value === 'string' && issue.code !== 'wrong-type') expect(sentence).toContain(value);
        }
      }
      expect(sentences[0]).not.toBe(sentences[1]);
    }
  });
});

describe('the sentence of an issue', () => {
  it('names the place, what is wrong and the mend', () => {
    expect(
      en({
        code: 'wrong-type',
        path: ['attempts', 2, 'layout', 'pieces', 1, 'turnRad'],
        details: DETAILS['wrong-type'],
      }),
    ).toBe('attempts 3, layout, pieces 2, turnRad: This is a text in quotation marks. Write a number.');
    expect(es({ code: 'wrong-type', path: ['name'], details: DETAILS['wrong-type'] })).toBe(
      'name: Aquí hay un texto entre comillas. Escribe un número.',
    );
  });

  it('leaves out the place when it is the whole file', () => {
    expect(en({ code: 'not-json', path: [], details: { line: 7, column: 3 } })).toBe(
      'The file cannot be read on from line 7, column 3 (not JSON). Look there and just before: is a comma, quote or bracket missing or one too many? Decimals take a point, and quotes are straight.',
    );
  });

  it('gives a limit the unit of its field', () => {
    expect(en({ code: 'too-large', path: ['gapAllowanceMm'], details: { most: 50 } })).toBe(
      'gapAllowanceMm: This number is too large. Write 50 mm or less.',
    );
    expect(en({ code: 'too-small', path: ['kinds', 0, 'material', 'gramsPerM2'], details: { least: 10 } })).toBe(
      'kinds 1, material, gramsPerM2: This number is too small. Write 10 g/m² or more.',
    );
    expect(es({ code: 'too-large', path: ['state', 'afterSeconds'], details: { most: 86_400 } })).toBe(
      'state, afterSeconds: Este número es demasiado grande. Escribe 86400 s o menos.',
    );
    expect(en({ code: 'too-large', path: ['pieces', 0, 'turnRad'], details: { most: 100 } })).toBe(
      'pieces 1, turnRad: This number is too large. Write 100 rad or less.',
    );
  });

  it('tells the limits that there are', () => {
    expect(en({ code: 'too-small', path: ['per'], details: { moreThan: 0 } })).toBe(
      'per: This number is too small. Write more than 0.',
    );
    expect(
      en({ code: 'number-out-of-range', path: ['judged', 0, 'mark'], details: { value: 5, least: 0, most: 4 } }),
    ).toBe('judged 1, mark: The number 5 is not allowed here. Write a number from 0 to 4.');
  });

  it('counts pieces from 1', () => {
    expect(en({ code: 'overlaps', path: ['pieces', 4, 'on'], details: { other: 2, depthMm: 7.25 } })).toBe(
      'pieces 5, on: This piece runs 7.25 mm into piece 3. Move it aside, or stack it on top.',
    );
    expect(es({ code: 'overlaps', path: ['pieces', 4, 'on'], details: { other: 2, depthMm: 7.25 } })).toBe(
      'pieces 5, on: Esta pieza se mete 7,25 mm en la pieza 3. Apártala o ponla encima.',
    );
  });

  it('lets the code of a later program stand for itself', () => {
    expect(en({ code: 'made-of-cheese', path: ['kit'], details: {} })).toBe('kit: made-of-cheese');
  });
});

describe('a place', () => {
  it('has keys as in the file and positions from 1', () => {
    expect(placeText([])).toBe('');
    expect(placeText(['attempts', 0])).toBe('attempts 1');
    expect(placeText(['points', 0, 1])).toBe('points 1 2');
    expect(placeText([3, 'at'])).toBe('4, at');
  });
});
