// The sheets beside the nets: for pupils, for the teacher, for photos.

import { usePlanWords } from '../../app/plan-words.ts';
import { PartRow } from './part-row.tsx';
import type { Reader } from './parts.ts';
import { copyForOf, readerOf } from './parts.ts';
import type { Printing } from './use-printing.ts';

const READERS: readonly Reader[] = ['pupils', 'teacher', 'photos'];

export function SheetList({ printing }: { readonly printing: Printing }) {
  const { say } = usePlanWords();
  const { parts, settings, sheets } = printing;
  if (sheets.failed) return <p className="oops">{say('printing.failed')}</p>;
  const rows = parts.flatMap((part) =>
    part.id === 'nets' || part.id === 'table-cards' ? [] : [{ part, id: part.id }],
  );
  return (
    <>
      {READERS.map((reader) => (
        <section key={reader} className="sec">
          <h2>{say(`printing.for-${reader}`)}</h2>
          <ul className="print-list">
            {rows
              .filter(({ id }) => readerOf(id) === reader)
              .map(({ part, id }) => {
                const each = settings.copies === 'one' ? '' : say(`printing.each-${copyForOf(id)}`);
                return (
                  <PartRow key={id} part={part} printing={printing} what={`${say(`printing.what-${id}`)} ${each}`} />
                );
              })}
          </ul>
        </section>
      ))}
    </>
  );
}
