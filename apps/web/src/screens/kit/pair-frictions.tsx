// Frictions that were measured for two surfaces on each other. One that was not follows from the kinds.

import { TABLE } from '@cairnmark/engine';
import { FRICTION_MOST } from '@cairnmark/formats';
import { useState } from 'preact/hooks';
import { NumberField } from '../../parts/number-field.tsx';
import type { Pair } from '../../store/kit-materials.ts';
import { pairsOf, samePair, setPairFriction } from '../../store/kit-materials.ts';
import { Refused } from './refused.tsx';
import { useKit } from './use-kit.ts';

export function PairFrictions() {
  const { at, say, make, use, ruler, words } = useKit();
  const { kit } = at.challenge;
  const [refused, setRefused] = useState<readonly string[]>([]);
  const set = (pair: Pair, friction: number | null): void =>
    setRefused(make(setPairFriction(at.challenge.id, pair, friction), say('kit.did-friction')));
  /** The smaller one of what the kinds of the two surfaces have; the table takes that of the piece. */
  const usual = ([first, second]: Pair): string => {
    const frictions = kit.kinds.filter(({ surface }) => surface === first || surface === second);
    return words.number(Math.min(...frictions.map(({ friction }) => friction)));
  };
  return (
    <section aria-label={say('kit.pairs')}>
      <h2>{say('kit.pairs')}</h2>
      <p className="mut">{say('kit.pairs-what')}</p>
      <ul className="kit-pairs">
        {pairsOf(kit).map((pair) => {
          const [first, second] = pair;
          return (
            <li key={pair.join('\n')}>
              <NumberField
                label={second === TABLE ? say('kit.pair-table', { first }) : say('kit.pair', { first, second })}
                value={kit.frictions.find(({ between }) => samePair(between, pair))?.friction ?? null}
                unit="ratio"
                ruler={ruler}
                least={0}
                most={FRICTION_MOST}
                disabled={use.locked}
                change={(friction) => set(pair, friction)}
                clear={() => set(pair, null)}
              />
              <p className="mut">{say('kit.pair-usual', { friction: usual(pair) })}</p>
            </li>
          );
        })}
      </ul>
      <Refused sentences={refused} />
    </section>
  );
}
