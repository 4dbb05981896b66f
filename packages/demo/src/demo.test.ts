import { expect, it } from 'vitest';
import { demoClass, demoText } from './demo.ts';

it('is written in Spanish too, with every name, rule and reason', () => {
  const [english, spanish] = [written(demoClass('en')), written(demoClass('es'))];
  expect(spanish).toHaveLength(english.length);
  expect(english.length).toBeGreaterThan(30);
  const same = new Set(english.filter((text, k) => text === spanish[k]));
  // The only word that both languages write alike.
  expect([...same]).toEqual(['Idea']);
});

it('has the same ids and numbers in both languages', () => {
  const bare = (record: object): unknown =>
    JSON.parse(JSON.stringify(record), (key, value: unknown) => (isText(key, value) ? '' : value));
  expect(bare(demoClass('es'))).toEqual(bare(demoClass('en')));
  expect(demoText).toContain('"Skerry Light"');
});

function written(record: object): string[] {
  const found: string[] = [];
  JSON.parse(JSON.stringify(record), (key, value: unknown) => {
    if (isText(key, value)) found.push(String(value));
    return value;
  });
  return found;
}

/** What people wrote; `by` names who decided, but also the measure that ranks. */
const isText = (key: string, value: unknown): boolean =>
  ['name', 'text', 'reason', 'judge', 'confirmedBy'].includes(key)
    ? typeof value === 'string'
    : key === 'by' && (value === 'teacher' || value === 'docente');
