// One group on the table of numbers.

import type { Group } from '@cairnmark/engine';
import { SECONDS_MOST } from '@cairnmark/engine';
import { useState } from 'preact/hooks';
import { usePlanWords } from '../../app/plan-words.ts';
import { LengthField } from '../../parts/length-field.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { readingDoubt } from '../../parts/reading-doubt.ts';
import { secondsOf, withoutSeconds, withSeconds } from '../../store/observed-changes.ts';
import { withReadingAt } from '../../store/sheet-changes.ts';
import { PiecesCell, PiecesRow } from './pieces.tsx';
import { SeenCell } from './seen-cell.tsx';
import type { SheetData } from './sheet.ts';
import { StateCell } from './state-cell.tsx';
import { useRow } from './use-row.ts';

export function NumbersRow({
  sheet,
  group,
  readings,
}: {
  readonly sheet: SheetData;
  readonly group: Group;
  /** Columns for readings of the height. */
  readonly readings: number;
}) {
  const { say } = usePlanWords();
  const row = useRow(sheet, group);
  const [open, setOpen] = useState(false);
  const { attempt, type, built } = row;
  const heights = attempt?.observed.heightReadingsMm ?? [];
  const fell = attempt?.state.kind === 'fell';
  const { ruler, inClass } = sheet.words;
  const doubt = readingDoubt(heights, null);
  const gap = doubt?.about === 'apart' ? inClass.full(doubt.gapMm, 'mm') : null;
  return (
    <tbody className={built ? undefined : 'is-out'}>
      <tr>
        <th scope="row">
          {group.name}
          {row.number > 1 && <small className="mut">{say('record-sheet.try', { number: row.number })}</small>}
        </th>
        <td data-label={say('record-sheet.state')}>
          <StateCell row={row} group={group} />
        </td>
        {Array.from({ length: readings }, (_, k) => (
          <td key={k} data-column={`reading-${k}`} data-label={say('record-sheet.reading', { number: k + 1 })}>
            <LengthField
              label={say('record-sheet.reading-of', { number: k + 1, group: group.name })}
              hideLabel
              valueMm={heights[k] ?? null}
              ruler={ruler}
              disabled={!built}
              change={(valueMm) => type(withReadingAt(k, valueMm))}
              clear={() => {
                if (k < heights.length) type(withReadingAt(k, null));
              }}
            />
          </td>
        ))}
        <td data-column="seconds" data-label={say('record-sheet.seconds')}>
          <NumberField
            label={say('record-sheet.seconds-of', { group: group.name })}
            hideLabel
            value={attempt === null ? null : secondsOf(attempt)}
            unit="s"
            ruler={ruler}
            least={0}
            most={SECONDS_MOST}
            disabled={!built}
            change={(seconds) => type(withSeconds(seconds))}
            clear={
              fell
                ? undefined
                : () => {
                    if (attempt !== null) type(withoutSeconds);
                  }
            }
          />
        </td>
        <td data-label={say('record-sheet.pieces')}>
          <PiecesCell sheet={sheet} group={group} row={row} open={open} toggle={() => setOpen(!open)} />
        </td>
        <td data-label={say('record-sheet.seen')}>
          <SeenCell sheet={sheet} group={group} row={row} />
        </td>
      </tr>
      {gap !== null && (
        <tr className="doubt-row">
          <td colSpan={readings + 5}>
            <p className="warnbox" role="status">
              {say('record-sheet.readings-apart', { group: group.name, gap })}
            </p>
          </td>
        </tr>
      )}
      {open && <PiecesRow sheet={sheet} group={group} row={row} columns={readings + 5} />}
    </tbody>
  );
}
