// One group on the board: its place, its bar, what is noted of it and its values.

import { Icon } from '../../parts/icon.tsx';
import type { Axis } from './axis.ts';
import { BarDrawing } from './bar.tsx';
import type { Bar } from './bars.ts';
import type { Beside } from './columns.ts';
import type { Fills } from './legend.tsx';
import type { BoardLine } from './lines.ts';
import { isVoid } from './lines.ts';
import type { Near } from './near.ts';
import { RowHead, UnshownRow } from './row-head.tsx';
import type { Scene } from './scene.ts';
import { groupName } from './scene.ts';
import { besideText, besideTitle, columnTitle, keyText, nearTexts, notesOf, outText } from './texts.ts';
import { ValueCell } from './value-cell.tsx';

interface RowProps {
  readonly line: BoardLine;
  readonly lines: readonly BoardLine[];
  readonly isShown: boolean;
  readonly placesHidden: boolean;
  readonly near: Near | null;
  /** With whom it shares its place, and who is near, of those that are shown. */
  readonly placeNotes: readonly string[];
  readonly isLast: boolean;
  readonly bar: Bar | null;
  readonly axis: Axis;
  readonly fills: Fills;
  readonly beside: Beside | null;
  readonly decimals: { readonly first: number; readonly beside: number };
  readonly scene: Scene;
  readonly ask: ((group: string) => void) | null;
}

export function RankingRow(props: RowProps) {
  const { line, isShown, placesHidden, bar, axis, fills, beside, decimals, scene } = props;
  const { challenge } = scene;
  if (!isShown) return <UnshownRow cells={beside === null ? 3 : 4} />;
  const isOut = line.place === null;
  return (
    <tr className={isOut ? 'rank-gone' : undefined}>
      <RowHead
        row={line}
        rows={props.lines}
        name={groupName(scene.record, line.group)}
        placesHidden={placesHidden}
        ask={props.ask}
      />
      <td className="rank-bar">
        {bar !== null && <BarDrawing bar={bar} axis={axis} fills={fills} />}
        {isOut && <Out line={line} scene={scene} />}
        <Notes {...props} />
      </td>
      {beside !== null && (
        <ValueCell
          className="rank-beside"
          title={besideTitle(beside, scene)}
          text={isVoid(line) ? null : besideText(line, beside, decimals.beside, scene)}
          scene={scene}
        />
      )}
      <ValueCell
        className="rank-first"
        title={columnTitle(challenge.ranking.first.by, scene)}
        text={isVoid(line) ? null : keyText(line, challenge.ranking.first, decimals.first, scene)}
        scene={scene}
      />
    </tr>
  );
}

function Out({ line, scene }: Pick<RowProps, 'line' | 'scene'>) {
  const waits = line.standing.out.some(({ code }) => code === 'not-confirmed' || code === 'no-attempt');
  return (
    <p className="rank-out">
      <Icon name={waits ? 'clock' : 'no'} />
      <span>
        <b>{scene.screen.say(waits ? 'board.not-ranked-yet' : 'board.not-ranked')}</b> {outText(line, scene)}
      </span>
    </p>
  );
}

function Notes({ line, near, placeNotes, isLast, placesHidden, scene }: RowProps) {
  const notes = notesOf(line, scene);
  return (
    <>
      {notes.length > 0 && <p className="rank-notes">{notes.join(' · ')}</p>}
      {!placesHidden && <span className="vh">{placeNotes.join('; ')}</span>}
      {near !== null && <NearMark line={line} near={near} isLast={isLast} scene={scene} />}
    </>
  );
}

/** On the line between two rows; where they stand close, in a few words at the side. */
function NearMark({
  line,
  near,
  isLast,
  scene,
}: Pick<RowProps, 'line' | 'isLast' | 'scene'> & { readonly near: Near }) {
  const { long, short } = nearTexts(near, line, scene);
  const group = groupName(scene.record, near.next);
  const told = (mark: string): string => (isLast ? scene.screen.say('board.near-next', { group, near: mark }) : mark);
  return (
    <p className="rank-near">
      <Icon name="near" />
      <span className="rank-near-long">{told(long)}</span>
      <span className="rank-near-short" aria-hidden="true">
        {told(short)}
      </span>
    </p>
  );
}
