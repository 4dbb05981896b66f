// What the search for the fairest points came to, and whether all could ever earn alike.

import type { Evenness, ExactlyEven, Times } from '@cairnmark/scoring';
import { pointsRuleText, timesText } from '@cairnmark/words';
import { costText, decimalsOf, paperOf, rounded } from './earned.ts';
import type { Cost, Lab } from './lab.ts';
import { useLab } from './lab.ts';
import { TriedRule } from './tried-rule.tsx';

export function EvenFound({
  answer,
  cost,
  negative,
  rows,
}: {
  readonly answer: Evenness;
  /** What was to be even. */
  readonly cost: Cost;
  /** Whether rows could take points. */
  readonly negative: boolean;
  readonly rows: readonly string[];
}) {
  const lab = useLab();
  const { say, words } = lab;
  if (answer.status === 'not-settled') return <p className="note">{say('lab.stopped')}</p>;
  if (answer.status === 'no-rows') return <p className="warnbox">{say('lab.even-no-rows')}</p>;
  const { rule, exactly } = answer;
  const share = cost === 'paper' ? paperOf(lab).share : 1;
  const [lowest, highest] = [rule.lowest * share, rule.highest * share];
  const decimals = decimalsOf([lowest, highest]);
  const points = (value: number): string => words.counted('points', rounded(value), decimals);
  return (
    <div className="note fair-found">
      <p>{say('lab.even-found', { what: costText(cost, lab) })}</p>
      <TriedRule rule={rule} rows={rows}>
        {rule.gap === 0
          ? say('lab.even-exact')
          : say('lab.even-spread', { lowest: points(lowest), highest: points(highest) })}
      </TriedRule>
      {rule.gap > 0 && <p>{exactlyText(exactly, { cost, negative, rows }, lab)}</p>}
    </div>
  );
}

function exactlyText(
  exactly: ExactlyEven,
  { cost, negative, rows }: { readonly cost: Cost; readonly negative: boolean; readonly rows: readonly string[] },
  lab: Lab,
): string {
  const { say, words } = lab;
  if (exactly.possible) {
    return say('lab.even-exact-rule', { rule: pointsRuleText(rows, exactly.rule.rates, lab) });
  }
  const listed = (side: readonly Times[]): string =>
    words.listed(side.map(({ kind, times }) => timesText(times, kind, lab)));
  const sides = { these: listed(exactly.these), those: listed(exactly.those) };
  return negative
    ? say('lab.even-never-negative', { ...sides, unlike: say(`lab.unlike-${cost}`) })
    : say('lab.even-never', { ...sides, alike: say(`lab.alike-${cost}`) });
}
