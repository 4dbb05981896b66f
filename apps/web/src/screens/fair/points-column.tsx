// The points that are tried, row by row, and the way of counting.

import type { LabRow } from '@cairnmark/engine';
import { usePlanWords } from '../../app/plan-words.ts';
import { Choice } from '../../parts/choice.tsx';
import { COUNTINGS, WAYS } from '../challenge/ways.ts';
import { named, rowText, useLab } from './lab.ts';

/** No points table of a class goes further. */
const MOST = 99;

export function PointsColumn() {
  const lab = useLab();
  const { say, kit, counting, count, words, inClass, others } = lab;
  const plan = usePlanWords();
  return (
    <section className="fair-points" aria-labelledby="fair-points">
      <h2 id="fair-points">{say('lab.points')}</h2>
      <ul>
        {kit.rows.map((row, j) => (
          <RateRow key={row.id} row={row} place={j} />
        ))}
      </ul>
      {others.length > 0 && (
        <p className="mut">
          {say('lab.not-of-a-piece', { measures: words.listed(others.map((measure) => inClass.label(measure))) })}
        </p>
      )}
      <Choice
        label={say('lab.counting')}
        options={COUNTINGS.map((id) => ({ id, text: plan.say(WAYS[id]) }))}
        chosen={counting}
        choose={count}
      />
      <p className="mut">{words.capital(words.names.counting[counting])}.</p>
    </section>
  );
}

function RateRow({ row, place }: { readonly row: LabRow; readonly place: number }) {
  const lab = useLab();
  const { say, kit, rates, tryRates, words, inClass } = lab;
  const rate = rates[place] ?? 0;
  const step = (by: 1 | -1): void => {
    const next = Math.max(-MOST, Math.min(MOST, rate + by));
    tryRates({ ...named(kit.rows, rates), [row.id]: next });
  };
  const name = rowText(row, lab);
  return (
    <li>
      <span>
        <b>{words.capital(inClass.label(row.id))}</b>
        <small>
          {row.per === 1 ? say('lab.each') : say('lab.each-per', { per: inClass.exactAmount(row.id, row.per) })}
        </small>
      </span>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as one bar in every browser */}
      <span className="fair-step" role="group" aria-label={name}>
        <button type="button" aria-label={say('lab.fewer', { row: name })} onClick={() => step(-1)}>
          −
        </button>
        <output>{words.number(rate)}</output>
        <button type="button" aria-label={say('lab.more', { row: name })} onClick={() => step(1)}>
          +
        </button>
      </span>
    </li>
  );
}
