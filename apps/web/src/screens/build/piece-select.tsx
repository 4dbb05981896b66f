// Chooses another piece of the build, or the table.

import { useId } from 'preact/hooks';
import { useScreenWords } from '../../app/use-words.ts';
import type { Shown } from './shown.ts';

export function PieceSelect({
  at,
  editor,
  piece,
  label,
  value,
  choose,
}: Shown & {
  readonly piece: number;
  readonly label: string;
  readonly value: number | 'table';
  readonly choose: (piece: number | 'table') => void;
}) {
  const screen = useScreenWords();
  const id = useId();
  const nameOf = (kind: string): string => at.challenge.kit.kinds.find((one) => one.id === kind)?.name ?? kind;
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        className="in"
        value={String(value)}
        onChange={({ currentTarget }) =>
          choose(currentTarget.value === 'table' ? 'table' : Number(currentTarget.value))
        }
      >
        <option value="table">{screen.say('tool.on-table')}</option>
        {editor.pieces.map(({ kind }, k) =>
          k === piece ? null : <option key={k} value={k}>{`${k + 1} ${nameOf(kind)}`}</option>,
        )}
      </select>
    </div>
  );
}
