// One part on the list: ticked or not, what it is, how many pages.

import { usePlanWords } from '../../app/plan-words.ts';
import type { PrintPart } from './parts.ts';
import { pagesIn } from './parts.ts';
import { toggled } from './settings.ts';
import type { Printing } from './use-printing.ts';

export function PartRow({
  part,
  printing,
  what,
}: {
  readonly part: PrintPart;
  readonly printing: Printing;
  readonly what: string;
}) {
  const { say } = usePlanWords();
  const { settings, set } = printing;
  const waits = part.id === 'nets' && printing.nets.working;
  const { id, name, pages, told } = part;
  const none = pages.length === 0;
  const count = pagesIn([part]);
  return (
    <li>
      <label className="tick">
        <input
          type="checkbox"
          checked={settings.chosen.has(id)}
          onChange={() => set({ chosen: toggled(settings.chosen, id) })}
        />
        <span>
          <b>{name}</b>
          <span>{what}</span>
        </span>
      </label>
      <span className="print-count">
        {waits && say('printing.counting')}
        {!waits && !none && (count === 1 ? say('printing.one-page') : say('printing.pages', { pages: count }))}
        {!waits && none && told.length > 0 && say('printing.none')}
      </span>
      {told.length > 0 && (
        <ul className="print-why">
          {told.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
    </li>
  );
}
