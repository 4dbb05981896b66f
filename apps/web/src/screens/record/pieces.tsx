// The pieces of a build: how many, and kind by kind where only numbers are known of it.

import type { Group } from '@cairnmark/engine';
import { piecesUsed } from '@cairnmark/engine';
import { usePlanWords } from '../../app/plan-words.ts';
import { NumberField } from '../../parts/number-field.tsx';
import { isCounted, withPieces } from '../../store/sheet-changes.ts';
import type { SheetData } from './sheet.ts';
import type { Row } from './use-row.ts';

interface PiecesProps {
  readonly sheet: SheetData;
  readonly group: Group;
  readonly row: Row;
}

export function PiecesCell({
  sheet,
  group,
  row,
  open,
  toggle,
}: PiecesProps & { readonly open: boolean; readonly toggle: () => void }) {
  const { say } = usePlanWords();
  const used = row.attempt === null ? 0 : piecesUsed(row.attempt.layout).length;
  const count = sheet.words.words.counted('pieces', used);
  if (!row.built) return <span className="mut">–</span>;
  if (!isCounted(row.attempt)) return <span>{say('record-sheet.drawn', { pieces: count })}</span>;
  return (
    <button type="button" className="btn" aria-expanded={open} onClick={toggle}>
      {used === 0 ? say('record-sheet.not-counted') : count}
      <span className="vh"> {group.name}</span>
    </button>
  );
}

export function PiecesRow({ sheet, group, row, columns }: PiecesProps & { readonly columns: number }) {
  const { say } = usePlanWords();
  const { attempt } = row;
  const used = attempt === null ? [] : piecesUsed(attempt.layout);
  const countOf = (kind: string): number => used.filter((one) => one === kind).length;
  return (
    <tr className="pieces-row">
      <td colSpan={columns}>
        <p className="mut">{say('record-sheet.pieces-of', { group: group.name })}</p>
        <div className="pieces-fields">
          {sheet.challenge.kit.kinds.map(({ id, name, stock }) => (
            <NumberField
              key={id}
              label={name}
              value={countOf(id)}
              unit="count"
              unitName=""
              whole
              least={0}
              most={stock}
              ruler={sheet.words.ruler}
              change={(count) => row.type(withPieces(id, count))}
              clear={() => row.type(withPieces(id, 0))}
            />
          ))}
        </div>
      </td>
    </tr>
  );
}
