// All numbers of a challenge's board as a still table, and the same as a file for a spreadsheet.

import { useMemo } from 'preact/hooks';
import type { BoardLine } from './lines.ts';
import { fileRows, numberColumns } from './numbers.ts';
import { SaveTable } from './save-table.tsx';
import type { Scene } from './scene.ts';

export function NumbersTable({
  scene,
  lines,
  withPlaces,
}: {
  readonly scene: Scene;
  /** In the order in which they are shown. */
  readonly lines: readonly BoardLine[];
  readonly withPlaces: boolean;
}) {
  const { screen, record, challenge } = scene;
  const columns = useMemo(() => numberColumns(lines, scene, withPlaces), [lines, scene, withPlaces]);
  return (
    <div className="board-part board-numbers">
      <details>
        <summary>{screen.say('board.numbers')}</summary>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table is scrolled with the keys too */}
        <section className="board-scrolls" data-scrolls tabIndex={0} aria-label={screen.say('board.numbers')}>
          <table>
            <thead>
              <tr>
                {columns.map(({ title, isNumber }) => (
                  <th key={title} scope="col" className={isNumber ? 'board-number' : undefined}>
                    {title}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {lines.map((line) => (
                <tr key={line.group}>
                  {columns.map(({ title, isNumber, cell }) => (
                    <td key={title} className={isNumber ? 'board-number' : undefined}>
                      {cell(line).text}
                    </td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      </details>
      <SaveTable name={`${record.name} ${challenge.name}`} rows={() => fileRows(columns, lines)} />
    </div>
  );
}
