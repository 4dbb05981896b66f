// The command best: the best possible build at the terminal.

import { describe, expect, it } from 'vitest';
import { tried } from './tried.ts';

describe('best', () => {
  it('gives the towers of the demo, and whose best they are', async () => {
    const { code, out } = await tried(['best', '--challenge', 'narrow-rock']);
    expect(code).toBe(0);
    expect(out).toContain('The tallest build that can be: 400 mm. It stands on a base of 10.8 cm².');
    expect(out).toContain('No build of these pieces that keeps the rules can have more.');
    expect(out).not.toContain('Tall Light');
  });

  it('says in Spanish what it did not look at', async () => {
    const { out } = await tried(['best', '--challenge', 'Harbour Wall', '--lang', 'es']);
    expect(out).toContain('Los puntos por esto no están incluidos: patio, perímetro visto desde arriba');
  });

  it('gives all of it as data', async () => {
    const { challenges } = JSON.parse((await tried(['best', '--as', 'json'])).out);
    expect(challenges.map((one: { goal: string }) => one.goal)).toEqual([
      'tallest',
      'tallest-on-smallest-base',
      'most-points',
    ]);
    expect(challenges[1]).toMatchObject({
      answer: { kind: 'best', value: 400, scope: 'any' },
      front: { finished: true },
    });
  });

  it('refuses a challenge that there is not', async () => {
    expect(await tried(['best', '--challenge', 'Low Light'])).toMatchObject({ code: 1, out: '' });
  });
});
