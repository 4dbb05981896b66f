// Find points: what is looked for, what may count, and what was found or why there is nothing to find.

import { isCountedRow } from '@cairnmark/engine';
import { useEffect, useState } from 'preact/hooks';
import type { Searched } from '../../workers/use-fair.ts';
import { useFairSearch } from '../../workers/use-fair.ts';
import { EvenFound } from './even-found.tsx';
import { Found } from './found.tsx';
import { useLab } from './lab.ts';
import type { Wish } from './task.ts';
import { evenCost, evenTask, favourTask, furtherRows } from './task.ts';
import { WishForm } from './wish-form.tsx';

export function FindPart() {
  const lab = useLab();
  const { say, kit } = lab;
  const favour = useFairSearch('favour');
  const even = useFairSearch('even');
  const [forgetFavour, forgetEven] = [favour.forget, even.forget];
  // What was found of other counts, or by other minutes, is no answer any more.
  useEffect(() => {
    forgetFavour();
    forgetEven();
  }, [kit.data, forgetFavour, forgetEven]);
  // What is fairest is so of what it was held against.
  useEffect(forgetEven, [lab.cost, forgetEven]);
  const [wish, setWish] = useState<Wish>(() => ({
    what: 'favour',
    favourite: kit.kinds[0]?.id ?? '',
    lead: 1,
    most: 10,
    negative: false,
    half: false,
    rows: kit.rows.filter(isCountedRow).map(({ id }) => id),
  }));
  // Another way of counting has other rows.
  const rows = wish.rows.filter((id) => kit.rows.some((row) => row.id === id));
  const asked: Wish = { ...wish, rows };
  const change = (part: Partial<Wish>): void => {
    forgetFavour();
    forgetEven();
    setWish({ ...asked, ...part });
  };
  const search = (): void => {
    if (wish.what === 'even') even.ask(evenTask(kit.data, asked, evenCost(lab)));
    else favour.ask({ task: favourTask(kit.data, asked), further: furtherRows(kit.data, asked), rules: RULES_WANTED });
  };
  const { found, stop } = wish.what === 'even' ? even : favour;
  return (
    <section className="fair-find" aria-labelledby="fair-find">
      <h2 id="fair-find">{say('lab.find')}</h2>
      <WishForm wish={asked} change={change} />
      <button
        type="button"
        className="btn fair-search"
        aria-disabled={rows.length === 0}
        onClick={() => rows.length > 0 && search()}
      >
        {say('lab.search')}
      </button>
      {rows.length === 0 && <p className="warnbox">{say('lab.few-rows')}</p>}
      <State found={found} stop={stop} />
      <div role="status" className="fair-result" aria-busy={found.kind === 'working'}>
        {wish.what === 'favour' && favour.found.kind === 'answered' && (
          <Found wish={asked} answer={favour.found.answer} rows={rows} />
        )}
        {wish.what === 'even' && even.found.kind === 'answered' && (
          <EvenFound answer={even.found.answer} cost={evenCost(lab)} negative={wish.negative} rows={rows} />
        )}
      </div>
    </section>
  );
}

/** More would not be read. */
const RULES_WANTED = 5;

function State({ found, stop }: { readonly found: Searched<unknown>; readonly stop: () => void }) {
  const { say } = useLab();
  switch (found.kind) {
    case 'working':
      return (
        <p className="fair-working">
          <span role="status">{say('lab.searching', { count: found.steps })}</span>
          <button type="button" className="btn" onClick={stop}>
            {say('lab.stop')}
          </button>
        </p>
      );
    case 'stopped':
      return (
        <p className="note" role="status">
          {say('lab.stopped')}
        </p>
      );
    case 'failed':
      return (
        <p className="badbox" role="alert">
          {say('lab.failed')}
        </p>
      );
    default:
      return null;
  }
}
