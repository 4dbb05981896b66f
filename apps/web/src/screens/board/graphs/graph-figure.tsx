// One graph with its question, what it shows in a sentence, and its numbers in a table for whoever asks.

import type { ComponentChildren } from 'preact';
import { useId, useState } from 'preact/hooks';
import { useTalkWords } from '../../../app/talk-words.tsx';
import type { Draw } from './plot-drawing.tsx';
import { PlotDrawing } from './plot-drawing.tsx';

export interface GraphTable {
  readonly titles: readonly string[];
  /** The first cell names the row. */
  readonly rows: readonly (readonly string[])[];
}

export function GraphFigure({
  title,
  lede,
  alt,
  draw,
  table,
  children,
}: {
  readonly title: string;
  readonly lede: readonly string[];
  readonly alt: string;
  readonly draw: Draw;
  readonly table: GraphTable;
  /** Below the drawing. */
  readonly children?: ComponentChildren;
}) {
  const { say } = useTalkWords();
  const [isOpen, setOpen] = useState(false);
  const id = useId();
  return (
    <section className="graph" aria-labelledby={id}>
      <div className="graph-head">
        <h2 id={id}>{title}</h2>
        <button type="button" className="btn bare graph-button" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
          {say(isOpen ? 'graphs.no-table' : 'graphs.table')}
        </button>
      </div>
      <p className="mut">{lede.join(' ')}</p>
      <PlotDrawing alt={alt} draw={draw} />
      {children}
      {isOpen && <Numbers table={table} name={title} />}
    </section>
  );
}

function Numbers({ table: { titles, rows }, name }: { readonly table: GraphTable; readonly name: string }) {
  return (
    <table className="graph-table" aria-label={name}>
      <thead>
        <tr>
          {titles.map((title, k) => (
            <th key={title} scope="col" className={k === 0 ? undefined : 'board-number'}>
              {title}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(([head, ...cells]) => (
          <tr key={head}>
            <th scope="row">{head}</th>
            {cells.map((cell, k) => (
              <td key={titles[k + 1]} className="board-number">
                {cell}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
