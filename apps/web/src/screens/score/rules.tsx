// Which rules the build keeps, each with its number. Yes/no rules are judged here by a person.

import type { Requirement, RequirementLine } from '@cairnmark/scoring';
import { CardHelp } from '../../app/card-help.tsx';
import { useMay } from '../../app/use-may.ts';
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
      {rules.some(({ rule }) => rule.kind === 'judged') && (
        <CardHelp items={[['help.judge', say('score-card.kept'), say('score-card.broken'), say('score-card.note')]]} />
      )}
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
  const { report, inClass, words, say, covering } = useCard();
  const mayJudge = useMay('judge');
  const { verdict, note, consequence } = line;
  const tolerance = report.facts.find(({ id }) => id === line.measure)?.tolerance ?? 0;
  const title = words.capital(inClass.ruleTitle(rule));
  const covered = line.measure !== null && covering.covered.has(line.measure);
  const inFull = !covered && (verdict === 'broken' || verdict === 'not-measured');
  return (
    <li className={verdict}>
      <Icon name={ICONS[verdict]} />
      <div>
        <span className="vh">{say(`score-card.${verdict}`)}: </span>
        {inFull ? inClass.rule(line, rule, tolerance) : title}
        {note !== null && !inFull && <small className="mut">{say('score-card.note-told', { note })}</small>}
        {rule.kind === 'judged' && mayJudge && <JudgeRule rule={rule} title={title} />}
      </div>
      <b className="card-value">
        {covered ? '?' : valueOf(line, tolerance, inClass, say)}
        {verdict === 'kept' && consequence.kind === 'earns' && (
          <small>+{words.counted('points', consequence.points)}</small>
        )}
      </b>
    </li>
  );
}

function valueOf(
  { measure, value, verdict }: RequirementLine,
  tolerance: number,
  inClass: ReturnType<typeof useCard>['inClass'],
  say: ReturnType<typeof useCard>['say'],
): string {
  if (measure !== null && value !== null) return inClass.amount(measure, value, tolerance);
  if (verdict === 'kept') return say('score-card.yes');
  return verdict === 'broken' ? say('score-card.no') : '–';
}
