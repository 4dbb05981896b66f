// The table of numbers: how it ended, readings of the ruler, seconds, pieces, and that somebody has seen the build.
// Enter goes on to the next group, as on a sheet of paper.

import { useRef } from 'preact/hooks';
import { usePlanWords } from '../../app/plan-words.ts';
import { lastTry } from '../../store/sheet-changes.ts';
import { NumbersRow } from './numbers-row.tsx';
import type { SheetData } from './sheet.ts';

/** Two readings settle a height; a third is for when they differ. */
const READINGS_LEAST = 2;
const READINGS_MOST = 5;

export function NumbersSheet({ sheet }: { readonly sheet: SheetData }) {
  const { record, challenge } = sheet;
  const { say } = usePlanWords();
  const table = useRef<HTMLTableElement>(null);
  const taken = record.groups.map(({ id }) => lastTry(record, id, challenge.id)?.observed.heightReadingsMm.length ?? 0);
  const readings = Math.min(READINGS_MOST, Math.max(READINGS_LEAST, ...taken.map((count) => count + 1)));
  const goDown = (input: HTMLElement): void => {
    const column = input.closest('td')?.dataset['column'];
    const cells = [...(table.current?.querySelectorAll<HTMLElement>(`td[data-column="${column}"] input`) ?? [])];
    cells[cells.indexOf(input) + 1]?.focus();
  };
  return (
    <table
      ref={table}
      className="sheet-table"
      onKeyDown={(event) => {
        if (event.key === 'Enter' && event.target instanceof HTMLInputElement) goDown(event.target);
      }}
    >
      <thead>
        <tr>
          <th scope="col">{say('record-sheet.group')}</th>
          <th scope="col">{say('record-sheet.state')}</th>
          {Array.from({ length: readings }, (_, k) => (
            <th key={k} scope="col">
              {say('record-sheet.reading', { number: k + 1 })}
            </th>
          ))}
          <th scope="col">{say('record-sheet.seconds')}</th>
          <th scope="col">{say('record-sheet.pieces')}</th>
          <th scope="col">{say('record-sheet.seen')}</th>
        </tr>
      </thead>
      {record.groups.map((group) => (
        <NumbersRow key={group.id} sheet={sheet} group={group} readings={readings} />
      ))}
    </table>
  );
}
