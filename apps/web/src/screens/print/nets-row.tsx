// The nets: how many pages they take, and what does not go on them.

import type { Ruler } from '@cairnmark/geometry';
import { usePlanWords } from '../../app/plan-words.ts';
import { NetsOptions } from './nets-options.tsx';
import { PartRow } from './part-row.tsx';
import type { Printing } from './use-printing.ts';

export function NetsRow({ printing, ruler }: { readonly printing: Printing; readonly ruler: Ruler }) {
  const { say } = usePlanWords();
  const { settings, parts, nets } = printing;
  const part = parts.find(({ id }) => id === 'nets');
  if (part === undefined) return null;
  return (
    <section className="sec">
      <h2>{say('printing.nets')}</h2>
      <ul className="print-list">
        <PartRow part={part} printing={printing} what={say('printing.nets-what')} />
      </ul>
      {nets.working && (
        <p className="print-progress">
          <progress value={nets.share} aria-label={say('printing.packing')} /> {say('printing.packing')}
        </p>
      )}
      <p role="status" className="vh">
        {nets.working ? say('printing.packing') : say('printing.pages', { pages: part.pages.length })}
      </p>
      {nets.failed && <p className="oops">{say('printing.failed')}</p>}
      {settings.chosen.has('nets') && <NetsOptions printing={printing} ruler={ruler} />}
    </section>
  );
}
