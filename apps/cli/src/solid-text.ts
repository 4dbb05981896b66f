// One solid of the catalogue for people. Sizes and sides stand as a file writes them, with their name where it differs.

import type { Counts, Resting, SizeField, Solid, SolidDefinition } from '@cairnmark/geometry';
import { rulerOf, TILT_BANDS } from '@cairnmark/geometry';
import type { ClassWords, Reader, TerminalWords } from '@cairnmark/words';

export function solidText({ id, fields, example, make }: SolidDefinition, words: TerminalWords): string {
  const title = `${words.capital(words.names.solids[id])}: ${id}`;
  const sizes = fields.map((field) => sizeText(field, words)).join('; ');
  const lines = [words.say('solids.sizes', { sizes })];
  const made = make(example);
  if (made.ok) lines.push(...exampleLines(made.value, words));
  return [title, ...lines.map((line) => `  ${line}`)].join('\n');
}

/** "radius or diameter or circumference". */
function sizeText({ name, unit, otherwise }: SizeField, words: TerminalWords): string {
  const nameOf = (size: string): string => named(size, own(words.names.sizes, size));
  const first = unit === 'count' ? words.say('solids.whole', { size: nameOf(name) }) : nameOf(name);
  return otherwise.reduce((size, other) => words.say('solids.or', { size, other: nameOf(other) }), first);
}

/** What holds for any sizes, shown on those of the example, in mm. */
function exampleLines(solid: Solid, words: TerminalWords): readonly string[] {
  const classWords = words.inClass(PLAIN_READER);
  const sizes = Object.entries(solid.sizes).map(([name, value]) => {
    const unit = name === 'sides' ? 'count' : 'mm';
    return `${own(words.names.sizes, name)} ${classWords.exact(value, unit)}`;
  });
  const { volume, surface } = solid.workings;
  const workings = [...new Set([...classWords.steps(volume), ...classWords.steps(surface)])];
  return [
    words.say('solids.example', { sizes: words.listed(sizes) }),
    ...workings.map((line) => `  ${line}`),
    words.say('solids.counts', { counts: countsText(solid.counts, words) }),
    words.say('solids.rests'),
    ...solid.restings.map((resting) => `  ${restingText(resting, words, classWords)}`),
  ];
}

function countsText(counts: Counts, words: TerminalWords): string {
  const parts = [
    words.counted('flat-faces', counts.flatFaces),
    words.counted('curved-surfaces', counts.curvedSurfaces),
    words.counted('straight-edges', counts.straightEdges),
    words.counted('curved-edges', counts.curvedEdges),
    words.counted('vertices', counts.vertices),
  ];
  return words.listed(counts.apexes > 0 ? [...parts, words.counted('apexes', counts.apexes)] : parts);
}

function restingText({ id, contact, heightMm }: Resting, words: TerminalWords, classWords: ClassWords): string {
  const name = named(id, own(words.names.restings, id));
  const height = classWords.amount('height', heightMm, 0);
  return words.say('solids.resting', { name, contact: words.names.contact[contact], height });
}

/** A key as files write it, and its name in brackets where that is more than the key with blanks. */
const named = (key: string, name: string): string => (key.replaceAll('-', ' ') === name ? key : `${key} (${name})`);

const own = (table: Readonly<Record<string, string>>, key: string): string => table[key] ?? key;

/** Reads mm; a solid of the catalogue belongs to no class that could have named things. */
const PLAIN_READER: Reader = {
  ruler: rulerOf('mm'),
  bands: TILT_BANDS,
  unitOf: () => 'mm',
  kindName: (kind) => kind,
  criterionName: (criterion) => criterion,
  groupName: (group) => group,
};
