// A rule that was found, and the way into the bars.

import type { LabRule } from '@cairnmark/scoring';
import { pointsRuleText } from '@cairnmark/words';
import { useLab } from './lab.ts';

/** A rule in words, and a button that puts it into the bars. */
export function TriedRule({
  rule: { rates },
  rows,
  before = '',
  children,
}: {
  readonly rule: Pick<LabRule, 'rates'>;
  readonly rows: readonly string[];
  /** Stands before the rule. */
  readonly before?: string;
  readonly children: string;
}) {
  const lab = useLab();
  const { say, kit, words, tryRates } = lab;
  const byRow = Object.fromEntries(rows.map((id, j) => [id, rates[j] ?? 0]));
  const all = kit.rows.map(({ id }) => byRow[id] ?? 0);
  const isTried = all.every((rate, j) => rate === lab.rates[j]);
  return (
    <>
      <p>
        {before} <b>{words.capital(pointsRuleText(rows, rates, lab))}.</b> {children}
      </p>
      <button type="button" className="btn" aria-pressed={isTried} onClick={() => tryRates(byRow)}>
        {say(isTried ? 'lab.trying' : 'lab.try')}
      </button>
    </>
  );
}
