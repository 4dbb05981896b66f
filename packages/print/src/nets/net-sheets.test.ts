import type { Solid, SolidSpec } from '@cairnmark/geometry';
import { makeSolid } from '@cairnmark/geometry';
import { makeNet, pathAreaMm2 } from '@cairnmark/nets';
import { printWords } from '@cairnmark/words';
import { describe, expect, it } from 'vitest';
import { ROOT, readText } from '../../../../tests/tools/files.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import { goreSheets } from './gore-sheets.ts';
import { netSheets } from './net-sheets.ts';
import type { NetOrder, NetSheets } from './order.ts';

const solidOf = (spec: SolidSpec): Solid => {
  const made = makeSolid(spec);
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  return made.value;
};

const CUBOID = solidOf({ solid: 'rectangular-prism', sizes: { length: 70, width: 50, height: 30 } });
const CONE = solidOf({ solid: 'cone', sizes: { radius: 30, height: 50 } });
const BALL = solidOf({ solid: 'sphere', sizes: { radius: 30 } });
const DIE = solidOf({ solid: 'cube', sizes: { edge: 7 } });
const cube = (edge: number): Solid => solidOf({ solid: 'cube', sizes: { edge } });

/** Every key that was said. */
const said = new Set<string>();
const english = printWords('en');
const words: typeof english = {
  ...english,
  say: (key, ...values) => {
    said.add(key);
    return english.say(key, ...values);
  },
};

const kind = (name: string, solid: Solid, count: number) => ({ id: name.toLowerCase(), name, solid, count });
const orderOf = (kinds: NetOrder['kinds'], changes: Partial<NetOrder> = {}): NetOrder => ({
  kinds,
  paper: 'a4',
  arrange: 'mixed',
  tabDepthMm: 8,
  large: 'tell',
  ...changes,
});

function sheetsOf(order: NetOrder): NetSheets {
  const sheets = netSheets(order, words, () => true);
  if (!sheets.ok || sheets.value === null) throw new Error(JSON.stringify(sheets));
  return sheets.value;
}

/** What is written on each page, without the foot. */
const textsOn = ({ pages }: NetSheets): string[][] =>
  pages.map(({ marks }) => marks.flatMap((mark) => (mark.kind === 'writing' && mark.at[1] > 22 ? [mark.text] : [])));
const feetOf = ({ pages }: NetSheets): string[] =>
  pages.map(({ marks }) =>
    marks.flatMap((mark) => (mark.kind === 'writing' && mark.at[1] < 22 ? [mark.text] : [])).join(' | '),
  );

describe('pages of nets', () => {
  it('hold every net that was ordered, each part with its name, and say how to go about it', () => {
    const sheets = sheetsOf(orderOf([kind('Box', CUBOID, 2), kind('Tip', CONE, 3), kind('None', cube(50), 0)]));
    expect(textsOn(sheets).flat().sort()).toEqual(
      ['Box', 'Box', 'Tip', 'Tip', 'Tip', 'Tip: base', 'Tip: base', 'Tip: base'].sort(),
    );
    expect([...sheets.counts]).toEqual([
      ['box', 2],
      ['tip', 3],
    ]);
    expect(sheets.leftOut).toEqual([]);
    expect(sheets.copies).toEqual(sheets.pages.map(() => 1));
    for (const foot of feetOf(sheets)) {
      expect(foot).toContain('Nets');
      expect(foot).toContain('fold, with the print inside');
      expect(foot).toContain('adults cut for young pupils');
      expect(foot).not.toContain('tape');
    }
  });

  it('have their tabs shaded, with a sample and its word at the foot, and no face', () => {
    const small = cube(30);
    const sheets = sheetsOf(orderOf([kind('Cube', small, 2)]));
    const { pages } = sheets;
    const shades = pages.flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === 'fill' ? [mark] : [])));
    const net = makeNet(small, { tabDepthMm: 8 });
    const tabs = net.ok ? net.value.parts.flatMap(({ tabs: own }) => own) : [];
    const areaMm2 = shades.reduce((sum, { paths }) => sum + paths.reduce((all, path) => all + pathAreaMm2(path), 0), 0);
    // Two nets, and the sample: 9 mm by 2.4 mm.
    expect(shades).toHaveLength(2 * tabs.length + 1);
    expectNear(areaMm2 - 9 * 2.4, 2 * tabs.reduce((sum, tab) => sum + tab.areaMm2, 0), { relative: 1e-9 });
    expect(new Set(shades.map(({ grey }) => grey))).toEqual(new Set([0.93]));
    expect(feetOf(sheets)[0]).toContain('tab: put glue on its blank side');
  });

  it('to photocopy have one kind each, and say how often each page is needed', () => {
    const sheets = sheetsOf(
      orderOf([kind('Box', CUBOID, 5), kind('Tip', CONE, 7)], { arrange: 'masters', invented: true }),
    );
    const [boxes, tips] = textsOn(sheets);
    expect([boxes!.every((text) => text === 'Box'), tips!.every((text) => text.startsWith('Tip'))]).toEqual([
      true,
      true,
    ]);
    const onPage = [sheets.counts.get('box'), sheets.counts.get('tip')];
    expect(onPage).toEqual([boxes!.length, tips!.filter((text) => text === 'Tip').length]);
    expect(sheets.copies).toEqual([Math.ceil(5 / onPage[0]!), Math.ceil(7 / onPage[1]!)]);
    expect(feetOf(sheets)[1]).toContain(`Nets: Tip (this page ${sheets.copies[1]} times), invented class`);
    expect(feetOf(sheetsOf(orderOf([kind('Box', CUBOID, 1)], { arrange: 'masters' })))[0]).toContain(
      '(this page once)',
    );
  });

  it('tell what is left out, and the largest that fits', () => {
    const kinds = [kind('Ball', BALL, 1), kind('Huge', cube(100), 1), kind('Box', CUBOID, 1)];
    const { leftOut, counts } = sheetsOf(orderOf(kinds));
    expect(leftOut).toMatchObject([
      { kind: 'ball', issue: { code: 'no-net' } },
      { kind: 'huge', issue: { code: 'too-large', details: { paper: 'A4', size: 'edge', largestMm: 66 } } },
    ]);
    expect([...counts.keys()]).toEqual(['box']);
    const drum = solidOf({ solid: 'cylinder', sizes: { radius: 50, height: 150 } });
    const split = sheetsOf(orderOf([kind('Drum', drum, 1)], { large: 'split' }));
    expect(split.leftOut).toMatchObject([
      { kind: 'drum', issue: { code: 'face-too-large', details: { size: 'radius', largestMm: 41, parts: 0 } } },
    ]);
    expect(split.pages).toEqual([]);
  });

  it('hold a net in parts, with a letter twice for every fold that was parted', () => {
    const sheets = sheetsOf(orderOf([kind('Huge', cube(100), 1)], { large: 'split' }));
    const texts = textsOn(sheets).flat();
    const parts = texts.filter((text) => text.startsWith('part '));
    expect(parts.sort()).toEqual(parts.map((_, k) => `part ${k + 1} of ${parts.length}`));
    expect(parts.length).toBeGreaterThan(1);
    // A net in n parts was parted at n - 1 folds.
    const letters = [...'ABCDE'].slice(0, parts.length - 1);
    expect(texts.filter((text) => text.length === 1).sort()).toEqual(letters.flatMap((letter) => [letter, letter]));
    for (const foot of feetOf(sheets)) expect(foot).toContain('Glue tab A on edge A, its blank side down.');
  });

  it('ask for tape where tabs are too small, and shorten a name that has no room', () => {
    const sheets = sheetsOf(orderOf([kind('Very small building block', DIE, 1), kind('Top', CONE, 1)]));
    expect(feetOf(sheets)[0]).toContain('Small tabs: use tape.');
    expect(textsOn(sheets).flat().join(' ')).toContain('Very small.');
    const drum = solidOf({ solid: 'cylinder', sizes: { radius: 20, height: 50 } });
    expect(textsOn(sheetsOf(orderOf([kind('Drum', drum, 1)]))).flat()).toContain('Drum: top');
  });

  it('can be stopped before a net is made and between two parts', () => {
    const order = orderOf([kind('Box', CUBOID, 3)]);
    for (const most of [0, 1, 3]) {
      let asked = 0;
      const stopped = netSheets(order, words, () => {
        asked += 1;
        return asked <= most;
      });
      expect(stopped).toEqual({ ok: true, value: null });
      expect(asked).toBe(most + 1);
    }
  });

  it('refuse a name that cannot be printed, and a long one stands on the nets alone', () => {
    expect(netSheets(orderOf([kind('Box', CUBOID, 1), kind('Kość', CUBOID, 1)]), words, () => true)).toMatchObject({
      ok: false,
      issues: [
        { code: 'character-unprintable', path: ['kinds', 1, 'name'], details: { character: 'ś' } },
        { code: 'character-unprintable', path: ['kinds', 1, 'name'], details: { character: 'ć' } },
      ],
    });
    const long = sheetsOf(orderOf([kind('Long box '.repeat(9).trim(), CUBOID, 1)], { arrange: 'masters' }));
    expect(feetOf(long)[0]).toContain('Nets | ');
    expect(() => sheetsOf(orderOf([kind('Box', CUBOID, 1.5)]))).toThrow(RangeError);
    expect(() => sheetsOf(orderOf([kind('Box', CUBOID, -1)]))).toThrow(RangeError);
  });
});

describe('strips for a paper ball', () => {
  it('are twelve, for the teacher; refused where a strip is longer than the page', () => {
    const sheet = goreSheets({ name: 'Ball', radiusMm: 20, paper: 'letter', invented: true }, words);
    if (!sheet.ok) throw new Error(JSON.stringify(sheet.issues));
    const marks = sheet.value.flatMap((page) => page.marks);
    expect(marks.filter((mark) => mark.kind === 'stroke' && mark.path.closed)).toHaveLength(12);
    expect(marks.flatMap((mark) => (mark.kind === 'writing' ? [mark.text] : []))).toContain('Paper ball: Ball');
    expect(goreSheets({ name: 'Ball', radiusMm: 150, paper: 'letter' }, words)).toMatchObject({
      ok: false,
      issues: [{ code: 'outline-too-large', details: { id: 'Ball' } }],
    });
  });
});

it('every text of the pages of nets has been said', () => {
  const file = readText(ROOT, 'packages/words/src/en/print/nets.ts');
  const pages = file.slice(0, file.indexOf('// Nets that are not on the pages.'));
  const keys = [...pages.matchAll(/'(print\.[\w-]+)':/g)].map(([, key]) => key!);
  expect(keys.length).toBeGreaterThan(10);
  expect(keys.filter((key) => !said.has(key) && key !== 'print.sheets')).toEqual([]);
});
