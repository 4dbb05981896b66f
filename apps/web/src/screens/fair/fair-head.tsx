// The head of Fair points: the question, the way back to today's points, and the use of those that are tried.

import { HelpButton, HelpTexts } from '../../parts/asked-help.tsx';
import { useLab } from './lab.ts';

export function FairHead({
  isAsked,
  use,
}: {
  /** Who would have won is told already. */
  readonly isAsked: boolean;
  readonly use: () => void;
}) {
  const { say, at, kit, today, tryRates } = useLab();
  const reset = (): void => tryRates(Object.fromEntries(kit.rows.map(({ id }, j) => [id, today[j] ?? 0])));
  return (
    <>
      <div className="fair-top">
        <div>
          <h1>{say('lab.title')}</h1>
          <p className="mut">
            {at.challenge.name}. {say('lab.lede')}
          </p>
        </div>
        <div className="fair-buttons">
          <HelpButton />
          <button type="button" className="btn" onClick={reset}>
            {say('lab.reset')}
          </button>
          <button type="button" className={isAsked ? 'btn' : 'btn main'} onClick={use}>
            {say('lab.use')}
          </button>
        </div>
      </div>
      <HelpTexts
        items={[
          [say('lab.help-reset'), say('lab.reset')],
          [say('lab.help-use'), say('lab.use'), say('lab.who-won')],
          [say('lab.help-points'), say('lab.points')],
          [say('lab.help-counting'), say('lab.counting')],
          [say('lab.help-for'), say('lab.for')],
          [say('lab.help-table'), say('lab.table')],
          [say('lab.help-minutes'), say('lab.minutes')],
          [say('lab.help-find'), say('lab.find')],
          [say('lab.help-try'), say('lab.try')],
          [say('lab.help-riddle'), say('lab.riddle')],
        ]}
      />
    </>
  );
}
