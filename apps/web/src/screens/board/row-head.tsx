// What each row of a board begins with, of one challenge or of the whole day: the place, and the group with the way to ask
// why it has it.

import { useCardWords } from '../../app/card-words.tsx';
import { useWords } from '../../app/use-words.ts';
import type { Row } from './arrangement.ts';
import { sharers } from './arrangement.ts';

export function HeadCells({ placesHidden }: { readonly placesHidden: boolean }) {
  const screen = useCardWords();
  return (
    <>
      {!placesHidden && (
        <th scope="col" className="rank-place">
          {screen.say('board.place')}
        </th>
      )}
      <th scope="col" className="rank-name">
        {screen.say('board.group')}
      </th>
    </>
  );
}

/** A row while places are shown one by one and its own is not yet. `cells`: how many stand behind the place. */
export function UnshownRow({ cells }: { readonly cells: number }) {
  const screen = useCardWords();
  return (
    <tr className="rank-unshown">
      <td className="rank-place" />
      <th scope="row" colSpan={cells}>
        {screen.say('board.not-shown')}
      </th>
    </tr>
  );
}

interface RowHeadProps {
  readonly row: Row;
  /** All rows of the board, of every page. */
  readonly rows: readonly Row[];
  readonly name: string;
  readonly placesHidden: boolean;
  /** null: places are not all shown, so nobody asks why. */
  readonly ask: ((group: string) => void) | null;
}

export function RowHead(props: RowHeadProps) {
  return (
    <>
      {!props.placesHidden && <Place {...props} />}
      <th scope="row" className="rank-name">
        <Name {...props} />
      </th>
    </>
  );
}

function Place({ row, rows }: RowHeadProps) {
  const screen = useCardWords();
  if (row.place === null) {
    return (
      <td className="rank-place">
        <span aria-hidden="true">–</span>
        <span className="vh">{screen.say('board.no-value')}</span>
      </td>
    );
  }
  return (
    <td className="rank-place">
      {row.place}
      {sharers(row, rows) > 1 && <small> {screen.say('board.shared')}</small>}
    </td>
  );
}

function Name({ row, name, ask }: RowHeadProps) {
  const screen = useCardWords();
  const words = useWords();
  if (ask === null || row.place === null) return name;
  return (
    <button type="button" aria-haspopup="dialog" onClick={() => ask(row.group)}>
      {name}
      <span className="vh">, {screen.say('board.why', { place: words.ordinal(row.place) })}</span>
    </button>
  );
}
