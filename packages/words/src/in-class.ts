// For tests: the words of a class that reads one ruler, rules with their lines, and which texts were used.

import type { Ruler, RulerId, Unit } from '@cairnmark/geometry';
import type { Requirement, RequirementLine } from '@cairnmark/scoring';
import { wordsFor } from './at-once.ts';
import type { ClassWords } from './class-words.ts';
import type { Language } from './language.ts';
import type { Reader } from './reader.ts';

type TestRuler = Extract<RulerId, 'mm' | 'half-cm' | 'sixteenth-inch'>;

const RULERS: Readonly<Record<TestRuler, Ruler>> = {
  mm: { id: 'mm', unit: 'mm', stepMm: 1 },
  'half-cm': { id: 'half-cm', unit: 'cm', stepMm: 5 },
  'sixteenth-inch': { id: 'sixteenth-inch', unit: 'in', stepMm: 25.4 / 16 },
};
const UNITS: Readonly<Record<string, Unit>> = {
  height: 'mm',
  'base-area': 'mm2',
  volume: 'mm3',
  'base-width': 'mm',
  'height-to-width': 'ratio',
  'volume-per-paper': 'mm',
  'area-to-perimeter': 'mm',
  'stood-seconds': 's',
  'stands-to': 'rad',
};
const GROUPS: Readonly<Record<string, string>> = { puffins: 'Puffins', terns: 'Terns', gannets: 'Gannets' };

/** Of the tests: 3 and 10 degrees. */
export const BANDS = { closeRad: Math.PI / 60, steadyRad: Math.PI / 18 };

export const readerWith = (ruler: TestRuler): Reader => ({
  ruler: RULERS[ruler],
  bands: BANDS,
  unitOf: (measure) => UNITS[measure] ?? 'count',
  kindName: (kind) => (kind === 'cube-5' ? 'large cube' : kind),
  criterionName: (criterion) => (criterion === 'idea' ? 'Idea' : criterion),
  groupName: (group) => GROUPS[group] ?? group,
});

export const inClass = (language: Language, ruler: TestRuler): ClassWords =>
  wordsFor(language).inClass(readerWith(ruler));

/** Texts that note which of them were read. */
export function watched<T extends object>(texts: T): { readonly texts: T; readonly used: ReadonlySet<string> } {
  const used = new Set<string>();
  const get = (all: T, key: string | symbol): unknown => {
    used.add(String(key));
    return Reflect.get(all, key);
  };
  return { texts: new Proxy(texts, { get }), used };
}

export const rule = (measure: string, comparison: 'exactly' | 'at-least' | 'at-most', limit: number): Requirement => ({
  id: 'r',
  kind: 'measured',
  measure,
  comparison,
  limit,
  consequence: { kind: 'must' },
});
export const line = (verdict: RequirementLine['verdict'], value: number | null, of: Requirement): RequirementLine => ({
  requirement: of.id,
  verdict,
  measure: of.kind === 'measured' ? of.measure : null,
  value,
  comparison: of.kind === 'measured' ? of.comparison : null,
  limit: of.kind === 'measured' ? of.limit : null,
  breaches: [],
  note: null,
  consequence: of.consequence,
});
