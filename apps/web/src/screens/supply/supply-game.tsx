// The supply game: what each group has earned, by strokes.

import { planning } from '../../app/planning.tsx';
import type { At } from '../../store/where-at.ts';
import { NoGame } from './no-game.tsx';
import { PlayedGame } from './played-game.tsx';
import './supply.css';

export default planning(SupplyGame);

function SupplyGame({ at }: { readonly at: At }) {
  const { challenge } = at;
  if (challenge.supply === null) return <NoGame key={challenge.id} at={at} />;
  return <PlayedGame key={challenge.id} at={at} rule={challenge.supply} />;
}
