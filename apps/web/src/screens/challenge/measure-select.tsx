// Chooses what is measured: all that the challenge can ask about, in the trade's words, in groups.

import { useForm } from './form.ts';
import type { MeasureGroup } from './measure-groups.ts';
import { measureGroups } from './measure-groups.ts';
import { SelectField } from './select-field.tsx';

export function MeasureSelect({
  value,
  choose,
  label,
  withPoints = false,
  only,
}: {
  readonly value: string;
  readonly choose: (measure: string) => void;
  readonly label: string;
  /** The points can be ranked by too. */
  readonly withPoints?: boolean;
  /** Which measures are offered; without it all are. */
  readonly only?: (measure: string) => boolean;
}) {
  const { challenge, words, inClass, say } = useForm();
  const option = (measure: string) => ({ id: measure, text: words.capital(inClass.plainLabel(measure)) });
  const groups = measureGroups(challenge).map(([group, measures]) => ({
    title: say(TITLE[group]),
    options: measures.filter((measure) => only?.(measure) ?? true).map(option),
  }));
  return (
    <SelectField
      label={label}
      value={value}
      choose={choose}
      options={withPoints ? [option('points')] : []}
      groups={groups.filter(({ options }) => options.length > 0)}
    />
  );
}

const TITLE = {
  build: 'challenge.group-build',
  counted: 'challenge.group-counted',
  ratios: 'challenge.group-ratios',
  standing: 'challenge.group-standing',
  kinds: 'challenge.group-kinds',
  judged: 'challenge.group-judged',
  earned: 'challenge.group-earned',
} as const satisfies Readonly<Record<MeasureGroup, string>>;
