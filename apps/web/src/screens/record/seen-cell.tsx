// Somebody has seen the real build; and the next try of the group, once this one is done.

import type { Group } from '@cairnmark/engine';
import { useState } from 'preact/hooks';
import { usePlanWords } from '../../app/plan-words.ts';
import { useScreenWords } from '../../app/use-words.ts';
import { Icon } from '../../parts/icon.tsx';
import { useHandFocus } from '../../parts/use-hand-focus.ts';
import { withSeenBy } from '../../store/observed-changes.ts';
import { asName } from '../../store/plain-text.ts';
import type { SheetData } from './sheet.ts';
import type { Row } from './use-row.ts';

export function SeenCell({
  sheet,
  group,
  row,
}: {
  readonly sheet: SheetData;
  readonly group: Group;
  readonly row: Row;
}) {
  const { say } = usePlanWords();
  const screen = useScreenWords();
  const { area, hand } = useHandFocus<HTMLDivElement>();
  const [missing, setMissing] = useState(false);
  const { attempt } = row;
  if (attempt === null || !row.built) return <span className="mut">–</span>;
  const seen = attempt.confirmedBy !== null;
  const who = asName(sheet.person.typed);
  const toggle = (): void => {
    setMissing(!seen && who === '');
    if (seen) row.type(withSeenBy(null));
    else if (who !== '') row.type(withSeenBy(who));
  };
  const begin = (): void => {
    // Nobody has seen the next try yet, so the button goes: its first reading comes next.
    hand((cell) => cell.closest('tr')?.querySelector('input'));
    row.begin();
  };
  return (
    <div className="seen-cell" ref={area}>
      <button type="button" className="btn" aria-pressed={seen} onClick={toggle}>
        {seen && <Icon name="yes" />}
        {say('record-sheet.seen')}
        <span className="vh"> {group.name}</span>
      </button>
      {seen && (
        <button type="button" className="btn bare" onClick={begin}>
          {screen.say('frame.new-try')}
          <span className="vh"> {group.name}</span>
        </button>
      )}
      <small role="status" className="oops">
        {missing && who === '' ? say('record-sheet.who-missing') : ''}
      </small>
    </div>
  );
}
