// How faces, edges and corners were counted, kind by kind, on squared paper.

import { isShown } from '@cairnmark/engine';
import { useState } from 'preact/hooks';
import { Choice } from '../../parts/choice.tsx';
import { useGame } from './game.ts';
import { countedFacts, countingOf } from './worth.ts';

export function Counted() {
  const { at, say, supply, words, inClass } = useGame();
  const facts = countedFacts(at.challenge).filter(
    (fact) => isShown(fact.replace('earned:', ''), at.challenge) || isShown(fact, at.challenge),
  );
  const [chosen, setChosen] = useState<string | null>(null);
  const fact = facts.find((one) => one === chosen) ?? facts[0];
  if (fact === undefined) return null;
  const { kinds, together } = countingOf(fact, supply, at.challenge, at.group);
  const nameOf = new Map(at.challenge.kit.kinds.map(({ id, name }) => [id, name]));
  return (
    <details className="supply-fold">
      <summary>{say('supply-game.counted')}</summary>
      {facts.length > 1 && (
        <Choice
          label={say('supply-game.counted')}
          hideLabel
          options={facts.map((id) => ({ id, text: words.capital(inClass.label(id)) }))}
          chosen={fact}
          choose={setChosen}
        />
      )}
      <dl className="squared supply-sheet">
        {kinds.map(({ kind, pieces, each, all }) => (
          <div key={kind}>
            <dt>{nameOf.get(kind)}</dt>
            <dd className="mut">{say('supply-game.times', { count: pieces, each: words.number(each) })}</dd>
            <dd>
              <b>{words.number(all)}</b>
            </dd>
          </div>
        ))}
        <div className="supply-together">
          <dt>
            <b>{words.capital(inClass.label(fact))}</b>
          </dt>
          <dd />
          <dd>
            <b>{words.number(together)}</b>
          </dd>
        </div>
      </dl>
    </details>
  );
}
