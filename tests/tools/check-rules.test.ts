import { expect, it } from 'vitest';
import { ruleFaults } from './check-rules.ts';
import { fixture } from './fixture.ts';

const RULES = '# Rules\n\n- [P1] Points add up.\n- [T2] Equal values share a place.\n';

function faultsWith(rules: string, test: string): string[] {
  return ruleFaults(fixture({ 'packages/scoring/RULES.md': rules, 'packages/scoring/src/a.test.ts': test }));
}

it('rules that are all tested pass, several in one title too', () => {
  expect(faultsWith(RULES, "it('[P1] adds'); it('[T2] shares');")).toEqual([]);
  expect(faultsWith(RULES, 'describe(`[P1] [T2] both`);')).toEqual([]);
});

it.each([
  ['a rule without a test', RULES, "it('[P1] adds');", 'packages/scoring/RULES.md: no test names [T2]'],
  ['an id in a comment only', RULES, "it('[P1] adds'); // [T2]", 'packages/scoring/RULES.md: no test names [T2]'],
  [
    'an unknown id',
    RULES,
    "it('[P1] adds'); it('[T2] shares'); it('[P9] ?');",
    'packages/scoring/src/a.test.ts: [P9] is no rule of packages/scoring/RULES.md',
  ],
  [
    'an id given twice',
    `${RULES}- [P1] Again.\n`,
    "it('[P1] [T2]');",
    'packages/scoring/RULES.md: [P1] is given twice',
  ],
  [
    'no rule at all',
    '# Rules\n',
    "it('adds');",
    'packages/scoring/RULES.md: holds no rule; a rule is a line "- [P1] text"',
  ],
])('%s is told', (_, rules, test, fault) => {
  expect(faultsWith(rules, test)).toEqual([fault]);
});
