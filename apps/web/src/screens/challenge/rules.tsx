// What a build must keep to: rules that are measured, rules that a person judges, rules about pieces.

import { Icon } from '../../parts/icon.tsx';
import { useHandFocus } from '../../parts/use-hand-focus.ts';
import type { RuleBefore } from '../../store/challenge-changes.ts';
import { addRule } from '../../store/challenge-changes.ts';
import { useForm } from './form.ts';
import { inLastRow, onAdd } from './in-rows.ts';
import { RuleRow } from './rule-row.tsx';
import { Told } from './told.tsx';
import { useMake } from './use-make.ts';

export function Rules() {
  const { challenge, locked, say } = useForm();
  const { faults, make } = useMake();
  const { area, hand } = useHandFocus<HTMLElement>();
  const add = (rule: RuleBefore): void => {
    if (make(addRule(rule))) hand(inLastRow);
  };
  const hasEarned = challenge.requirements.some(({ kind }) => kind === 'only-earned');
  const kinds = challenge.kit.kinds.map(({ id }) => id);
  return (
    <section className="chal-sec" ref={area}>
      <h2>{say('challenge.rules')}</h2>
      {challenge.requirements.length === 0 && <p className="mut">{say('challenge.no-rules')}</p>}
      {challenge.requirements.map((rule) => (
        <RuleRow key={rule.id} rule={rule} removed={() => hand(onAdd)} />
      ))}
      {!locked && (
        <div className="chal-add">
          <AddRule
            text={say('challenge.add-measured')}
            add={() =>
              add({
                kind: 'measured',
                measure: 'pieces',
                comparison: 'exactly',
                limit: USUAL_PIECES,
                consequence: MUST,
              })
            }
          />
          <AddRule
            text={say('challenge.add-judged')}
            add={() => add({ kind: 'judged', text: say('challenge.usual-judged'), consequence: MUST })}
          />
          {kinds.length > 0 && (
            <AddRule
              text={say('challenge.add-only-kinds')}
              add={() => add({ kind: 'only-kinds', kinds, consequence: MUST })}
            />
          )}
          {challenge.supply !== null && !hasEarned && (
            <AddRule
              text={say('challenge.add-only-earned')}
              add={() => add({ kind: 'only-earned', consequence: MUST })}
            />
          )}
        </div>
      )}
      <Told faults={faults} />
    </section>
  );
}

const MUST = { kind: 'must' } as const;
/** A tower of five is quickly built. Common practice, no source. */
const USUAL_PIECES = 5;

const AddRule = ({ text, add }: { readonly text: string; readonly add: () => void }) => (
  <button type="button" className="btn bare" onClick={add}>
    <Icon name="plus" />
    {text}
  </button>
);
