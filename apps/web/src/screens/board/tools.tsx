// What the teacher does with the board: freeze it, hide the places, show them one by one.

import type { ComponentChildren } from 'preact';
import { useCallback, useState } from 'preact/hooks';
import { useCardWords } from '../../app/card-words.tsx';
import { useMay } from '../../app/use-may.ts';
import { useSession } from '../../store/use-session.ts';
import { FreezeButton, FreezeNote } from './freeze.tsx';
import type { Freezing } from './use-frozen.ts';
import { useRevealKeys } from './use-reveal-keys.ts';
import type { Rows } from './use-rows.ts';

export function Tools<T>({
  rows,
  freezing,
  tell,
  always,
  children,
}: {
  readonly rows: Rows<T>;
  readonly freezing: Freezing;
  /** What is said of a place when it is shown. */
  readonly tell: (place: number) => string;
  /** Stands there of a frozen board too. */
  readonly always?: ComponentChildren;
  /** Of a board that is not frozen. */
  readonly children?: ComponentChildren;
}) {
  const words = useCardWords();
  const showOnBoard = useSession((session) => session.showOnBoard);
  const [told, setTold] = useState('');
  const mayDecide = useMay('decide');
  const { step } = rows;
  const stepAndTell = useCallback(
    (by: 1 | -1): void => {
      const place = step(by);
      setTold(place === null ? '' : tell(place));
    },
    [step, tell],
  );
  useRevealKeys(mayDecide && rows.reveal !== null, stepAndTell);
  return (
    <div className="board-tools">
      <div className="board-said">
        {always}
        {freezing.frozen === null && children !== undefined && <p className="mut">{children}</p>}
        <FreezeNote frozen={freezing.frozen} />
        {mayDecide && rows.reveal !== null && <p className="mut">{words.say('board.keys')}</p>}
      </div>
      <p className="vh" role="status">
        {told}
      </p>
      {!mayDecide ? null : rows.reveal === null ? (
        <div className="board-buttons">
          <FreezeButton freezing={freezing} />
          <button
            type="button"
            className="btn"
            aria-pressed={rows.placesHidden}
            onClick={() => showOnBoard({ placesHidden: !rows.placesHidden })}
          >
            {words.say('board.hide-places')}
          </button>
          <button type="button" className="btn" onClick={() => showOnBoard({ reveal: {}, placesHidden: false })}>
            {words.say('board.one-by-one')}
          </button>
        </div>
      ) : (
        <Reveal reveal={rows.reveal} step={stepAndTell} end={() => showOnBoard({ reveal: null })} />
      )}
    </div>
  );
}

function Reveal({
  reveal: { done, of },
  step,
  end,
}: {
  readonly reveal: NonNullable<Rows<unknown>['reveal']>;
  readonly step: (by: 1 | -1) => void;
  readonly end: () => void;
}) {
  const words = useCardWords();
  return (
    <div className="board-buttons">
      <button type="button" className="btn" aria-disabled={done === 0} onClick={() => step(-1)}>
        {words.say('board.last-place')}
      </button>
      <button type="button" className="btn main" aria-disabled={done === of} onClick={() => step(1)}>
        {words.say('board.next-place')}
      </button>
      <button type="button" className="btn" onClick={end}>
        {words.say('board.all-places')}
      </button>
    </div>
  );
}
