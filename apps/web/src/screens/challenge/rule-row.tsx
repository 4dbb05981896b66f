// One rule: what it says, and what hangs on it.

import { TEXT_CHARACTERS_MOST } from '@cairnmark/formats';
import type { Requirement } from '@cairnmark/scoring';
import { TextField } from '../../parts/text-field.tsx';
import { changeRule, removeRule } from '../../store/challenge-changes.ts';
import { ConsequenceFields } from './consequence-fields.tsx';
import { useForm } from './form.ts';
import { KindChecks } from './kind-checks.tsx';
import { MeasuredFields } from './measured-fields.tsx';
import { Row } from './row.tsx';
import { useMake } from './use-make.ts';

export function RuleRow({ rule, removed }: { readonly rule: Requirement; readonly removed: () => void }) {
  const { challenge, words, inClass } = useForm();
  const { faults, make, makeInClass } = useMake();
  const change = (next: Requirement): boolean => make(changeRule(rule.id, () => next));
  return (
    <Row
      name={words.capital(inClass.ruleTitle(rule))}
      kind="rule"
      faults={faults}
      remove={() => {
        if (makeInClass(removeRule(challenge.id, rule.id))) removed();
      }}
    >
      <What rule={rule} change={change} />
      <ConsequenceFields value={rule.consequence} change={(consequence) => change({ ...rule, consequence })} />
    </Row>
  );
}

function What({ rule, change }: { readonly rule: Requirement; readonly change: (rule: Requirement) => boolean }) {
  const { words, inClass, say } = useForm();
  switch (rule.kind) {
    case 'measured':
      return <MeasuredFields rule={rule} change={change} />;
    case 'judged':
      return (
        <TextField
          className="chal-what"
          label={say('challenge.judged-text')}
          value={rule.text}
          empty={say('challenge.text-empty', { kept: rule.text })}
          most={TEXT_CHARACTERS_MOST}
          change={(text) => change({ ...rule, text })}
        />
      );
    case 'only-kinds':
      return <KindChecks rule={rule} change={change} />;
    case 'only-earned':
      return <p className="chal-what chal-said">{words.capital(inClass.ruleTitle(rule))}</p>;
  }
}
