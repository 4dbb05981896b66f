// Which rules the build keeps, each with its number. Yes/no rules are judged here by a person.

import type { Requirement, RequirementLine } from '@cairnmark/scoring';
import type { IconName } from '../../parts/icon.tsx';
import { Icon } from '../../parts/icon.tsx';
import { useCard } from './card.ts';
import { JudgeRule } from './judge-rule.tsx';

const ICONS = {
  kept: 'yes',
  broken: 'no',
  'not-judged': 'unknown',
  'not-measured': 'unknown',
} as const satisfies Record<RequirementLine['verdict'], IconName>;

export function Rules() {
  const { at, report, inClass, words, say } = useCard();
  const rules = at.challenge.requirements.flatMap((rule) =>
    report.requirements.filter((line) => line.requirement === rule.id).map((line) => ({ rule, line })),
  );
  return (
    <section className="sec card-rules">
      <h2>{say('score-card.rules')}</h2>
      {rules.length === 0 && report.stockBreaches.length === 0 && <p className="mut">{say('score-card.no-rules')}</p>}
      <ul>
        {rules.map(({ rule, line }) => (
          <Rule key={rule.id} rule={rule} line={line} />
        ))}
        {report.stockBreaches.map((breach) => (
          <li key={breach.kind} className="broken">
            <Icon name="no" />
            <span>
              <span className="vh">{words.capital(words.names.verdicts.broken)}: </span>
              {inClass.stock(breach)}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Rule({ rule, line }: { readonly rule: Requirement; readonly line: RequirementLine }) {
  const { report, inClass, words, say } = useCard();
  const { verdict } = line;
  const tolerance = report.facts.find(({ id }) => id === line.measure)?.tolerance ?? 0;
  const title = words.capital(inClass.ruleTitle(rule));
  const inFull = inClass.rule(line, rule, tolerance);
  const toldInFull = verdict === 'broken' || verdict === 'not-measured' || line.note !== null || earns(line);
  return (
    <li className={verdict}>
      <Icon name={ICONS[verdict]} />
      <div>
        <span className="vh">{say(`score-card.${verdict}`)}: </span>
        {title}
        {toldInFull && <span className="card-in-full">{inFull}</span>}
        {rule.kind === 'judged' && <JudgeRule rule={rule} title={title} />}
      </div>
      <b className="card-value">{valueOf(line, inClass, say)}</b>
    </li>
  );
}

const earns = ({ verdict, consequence }: RequirementLine): boolean =>
  verdict === 'kept' && consequence.kind === 'earns';

function valueOf(
  { measure, value, verdict }: RequirementLine,
  inClass: ReturnType<typeof useCard>['inClass'],
  say: ReturnType<typeof useCard>['say'],
): string {
  if (measure !== null && value !== null) return inClass.exactAmount(measure, value);
  if (verdict === 'kept') return say('score-card.yes');
  return verdict === 'broken' ? say('score-card.no') : '–';
}
