import { demoClass } from '@cairnmark/demo';
import { labKit, pointsTable } from '@cairnmark/engine';
import { rulerOf } from '@cairnmark/geometry';
import { expect, it } from 'vitest';
import { scored, staged } from '../board/for-tests.ts';
import { barSpan } from './bar-span.ts';
import { firstOf, sideBySide, withPoints } from './ranked-under.ts';
import type { Wish } from './task.ts';
import { evenCost, evenTask, favourTask, furtherRows } from './task.ts';

const { scene } = staged(demoClass(), 'tall-light');
const { record, challenge } = scene;
const kit = labKit(challenge, 'flat-and-curved-apart', rulerOf('mm'), { cube: 6 });

it('the class under other points: old places stay, the points decide the new ones, height those of equal points', () => {
  // -1 for an edge and 1 for a corner.
  const points = pointsTable(
    kit.rows,
    kit.rows.map(({ id }) => (id === 'edges' ? -1 : id === 'corners' ? 1 : 0)),
  );
  const { copy, add } = withPoints(record, challenge, points, 'flat-and-curved-apart');
  const both = scored(add(record));
  expect(both.standings.get(challenge.id)).toEqual(scene.score.standings.get(challenge.id));
  const lines = sideBySide(both, challenge, copy);
  const places = lines.map(({ group, before, after }) => [group, before.place, after.place, after.decidedBy[0]?.value]);
  expect(places).toEqual([
    ['fulmars', 4, 1, -15],
    ['puffins', 1, 2, -16],
    ['terns', 2, 3, -16],
    ['gannets', 2, 4, -17],
    ['petrels', 5, 5, -17],
    ['eiders', null, null, null],
  ]);
  expect(firstOf(lines.map(({ before }) => before))).toEqual(['puffins']);
  expect(firstOf(lines.map(({ after }) => after))).toEqual(['fulmars']);
  expect([copy.name, copy.counting, copy.ranking.tieBreaks[0]?.by]).toEqual([
    'Tall Light 2',
    'flat-and-curved-apart',
    'height',
  ]);
});

it('a wish becomes a task of the rows that are ticked, and leaves the others to be offered', () => {
  const wish: Wish = { what: 'favour', favourite: 'cone', lead: 3, most: 7, negative: true, rows: ['edges', 'height'] };
  const task = favourTask(kit.data, wish);
  expect([task.favourite, task.lead, task.most, task.negative, task.data.rows]).toEqual([
    'cone',
    3,
    7,
    true,
    ['edges', 'height'],
  ]);
  // A cone of the demo class has no straight edge and stands 4 cm high.
  expect(task.data.kinds.find(({ id }) => id === 'cone')?.measures).toEqual([0, 4]);
  expect(furtherRows(kit.data, wish).rows).toEqual(['faces', 'curved-surfaces', 'corners', 'volume', 'paper']);
  expect(evenTask(kit.data, wish, 'paper')).toMatchObject({ goal: 'share', per: '100-cm2', most: 7 });
});

it('time is made even only where the minutes of every solid are told', () => {
  expect(evenCost({ cost: 'minutes', kit })).toBe('piece');
  const all = labKit(
    challenge,
    'flat-only',
    rulerOf('mm'),
    Object.fromEntries(challenge.kit.kinds.map(({ id }) => [id, 5])),
  );
  expect(evenCost({ cost: 'minutes', kit: all })).toBe('minutes');
  expect(evenCost({ cost: 'paper', kit })).toBe('paper');
});

it('bars stand on one line at 0, those below it to its left', () => {
  expect(barSpan(6, [6, 3, null, 0])).toEqual({ left: '0%', width: '100%' });
  expect(barSpan(3, [6, 3, null, 0])).toEqual({ left: '0%', width: '50%' });
  expect(barSpan(-2, [6, -2])).toEqual({ left: '0%', width: '25%' });
  expect(barSpan(6, [6, -2])).toEqual({ left: '25%', width: '75%' });
  expect(barSpan(0, [0, 0])).toEqual({ left: '0%', width: '0%' });
});
