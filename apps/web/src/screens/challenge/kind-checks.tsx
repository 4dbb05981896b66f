// Which kinds of the kit a rule allows.

import type { Requirement } from '@cairnmark/scoring';
import { useForm } from './form.ts';

type OnlyKinds = Extract<Requirement, { kind: 'only-kinds' }>;

export function KindChecks({
  rule,
  change,
}: {
  readonly rule: OnlyKinds;
  readonly change: (rule: OnlyKinds) => boolean;
}) {
  const { challenge, say } = useForm();
  const { kinds } = challenge.kit;
  const allow = (kind: string, allowed: boolean): boolean =>
    // In the order of the kit, however they were ticked.
    change({
      ...rule,
      kinds: kinds.map(({ id }) => id).filter((id) => (id === kind ? allowed : rule.kinds.includes(id))),
    });
  return (
    <fieldset className="chal-what chal-kinds">
      <legend className="lab">{say('challenge.only-kinds')}</legend>
      {kinds.map(({ id, name }) => (
        <label key={id} className="chal-check">
          <input
            type="checkbox"
            checked={rule.kinds.includes(id)}
            onChange={({ currentTarget }) => {
              // What was refused is not what the box says.
              if (!allow(id, currentTarget.checked)) currentTarget.checked = rule.kinds.includes(id);
            }}
          />
          <span>{name}</span>
        </label>
      ))}
    </fieldset>
  );
}
