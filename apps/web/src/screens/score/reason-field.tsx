// Why something was decided: told to everybody who reads the card.

import { TEXT_CHARACTERS_MOST } from '@cairnmark/formats';
import { LineField } from '../../parts/line-field.tsx';
import { useCard } from './card.ts';

export function ReasonField({ value, change }: { readonly value: string; readonly change: (typed: string) => void }) {
  const { say } = useCard();
  return <LineField label={say('score-card.reason')} value={value} most={TEXT_CHARACTERS_MOST} change={change} />;
}
