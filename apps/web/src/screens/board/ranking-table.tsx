// The rows of the ranking as a table. The bars are drawings; each of their numbers stands in a cell.

import { decimalsOf } from '../../parts/decimals.ts';
import { besideOf, pointsIn } from './columns.ts';
import type { Drawing } from './drawing.ts';
import type { Fills } from './legend.tsx';
import type { BoardLine } from './lines.ts';
import type { Near } from './near.ts';
import { shownNear } from './near.ts';
import { RankingRow } from './ranking-row.tsx';
import { HeadCells } from './row-head.tsx';
import { rowSizes } from './row-sizes.ts';
import { Ruler } from './ruler.tsx';
import type { Scene } from './scene.ts';
import { groupName } from './scene.ts';
import { besideTitle, columnTitle, keyText } from './texts.ts';
import type { Rows } from './use-rows.ts';

export function RankingTable({
  scene,
  lines,
  rows,
  drawing,
  fills,
  marks,
  ask,
}: {
  readonly scene: Scene;
  readonly lines: readonly BoardLine[];
  readonly rows: Rows<BoardLine>;
  readonly drawing: Drawing;
  readonly fills: Fills;
  /** Between places that are shown. */
  readonly marks: ReadonlyMap<string, Near>;
  /** null: places are not all shown, so nobody asks why. */
  readonly ask: ((group: string) => void) | null;
}) {
  const { screen, challenge, inClass, words } = scene;
  const { first } = challenge.ranking;
  const beside = besideOf(challenge);
  const decimals = {
    first: decimalsOf(pointsIn(lines, first) ?? []),
    beside: decimalsOf(pointsIn(lines, beside) ?? []),
  };
  const page = rows.pages[rows.page] ?? [];
  const values = lines.map((line) => keyText(line, first, decimals.first, scene));
  const names = lines.map(({ group }) => groupName(scene.record, group));
  return (
    <table className={rows.dense ? 'rank-table rank-dense' : 'rank-table'} style={rowSizes(page.length, names, values)}>
      <caption className="vh">{screen.say('board.order', { order: inClass.order(challenge.ranking) })}</caption>
      <thead>
        <tr>
          <HeadCells placesHidden={rows.placesHidden} />
          <th scope="col" className="rank-bar">
            <span className="vh">{screen.say('board.notes')}</span>
            <Ruler axis={drawing.axis} unit={drawing.unit} number={(value) => words.number(value)} />
          </th>
          {beside !== null && (
            <th scope="col" className="rank-beside">
              {besideTitle(beside, scene)}
            </th>
          )}
          <th scope="col" className="rank-first">
            {columnTitle(first.by, scene)}
          </th>
        </tr>
      </thead>
      <tbody>
        {page.map((line, k) => (
          <RankingRow
            key={line.group}
            line={line}
            lines={lines}
            isShown={rows.isShown(line)}
            placesHidden={rows.placesHidden}
            near={marks.get(line.group) ?? null}
            placeNotes={inClass.placeNotes(shownNear(line, lines, rows.isShown))}
            isLast={k === page.length - 1}
            bar={drawing.bars.get(line.group) ?? null}
            axis={drawing.axis}
            fills={fills}
            beside={beside}
            decimals={decimals}
            scene={scene}
            ask={ask}
          />
        ))}
      </tbody>
    </table>
  );
}
