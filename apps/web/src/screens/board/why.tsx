// Why a group has its place: line by line what separates it from the group above, for the first from the one below.

import { compareReports } from '@cairnmark/engine';
import type { RefObject } from 'preact';
import { Dialog } from '../../parts/dialog.tsx';
import { comparedWith } from './compared.ts';
import type { BoardLine } from './lines.ts';
import type { Scene } from './scene.ts';
import { groupName } from './scene.ts';

export function Why({
  dialog,
  line,
  lines,
  scene,
  title,
}: {
  readonly dialog: RefObject<HTMLDialogElement>;
  /** null: nobody has asked. */
  readonly line: BoardLine | null;
  readonly lines: readonly BoardLine[];
  readonly scene: Scene;
  readonly title: string;
}) {
  const { record, challenge, screen, inClass } = scene;
  return (
    <Dialog dialog={dialog} title={line === null ? title : `${groupName(record, line.group)}. ${title}`}>
      {line !== null && (
        <div className="board-why">
          <p className="mut">{screen.say('board.order', { order: inClass.order(challenge.ranking) })}</p>
          {inClass.placeNotes(line.standing).map((note) => (
            <p key={note}>{screen.say('board.shares', { group: groupName(record, line.group), note })}</p>
          ))}
          <Between line={line} lines={lines} scene={scene} />
        </div>
      )}
    </Dialog>
  );
}

function Between({
  line,
  lines,
  scene,
}: {
  readonly line: BoardLine;
  readonly lines: readonly BoardLine[];
  readonly scene: Scene;
}) {
  const { record, challenge, screen, inClass } = scene;
  const pair = comparedWith(line, lines);
  if (pair === null) return <p>{screen.say('board.why-alone')}</p>;
  const [first, second] = pair.map(({ group, report }) => ({ name: groupName(record, group), report }));
  if (!hasReport(first) || !hasReport(second)) return null;
  const sentences = inClass.why(compareReports(first.report, second.report, challenge), { challenge, first, second });
  return (
    <ul>
      {sentences.map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ul>
  );
}

type Named = { readonly name: string; readonly report: BoardLine['report'] };

const hasReport = (one: Named | undefined): one is { name: string; report: NonNullable<BoardLine['report']> } =>
  one !== undefined && one.report !== null;
