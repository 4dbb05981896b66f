// Saves all that is chosen as one PDF, or opens it in a tab to print it.

import type { ClassRecord } from '@cairnmark/engine';
import { writePdf } from '@cairnmark/print';
import { useState } from 'preact/hooks';
import { usePlanWords } from '../../app/plan-words.ts';
import { fileName } from '../../parts/file-name.ts';
import { Icon } from '../../parts/icon.tsx';
import { openFile, saveFile } from '../../parts/save-file.ts';
import { inOrder, pagesIn } from './parts.ts';
import type { Printing } from './use-printing.ts';

export function MakePdf({ printing, record }: { readonly printing: Printing; readonly record: ClassRecord }) {
  const { say, language } = usePlanWords();
  const [asked, setAsked] = useState(false);
  const { chosen, nets, sheets, settings } = printing;
  const pages = pagesIn(chosen);
  // The materials say how many sheets the nets take.
  const needsNets = settings.chosen.has('nets') || settings.chosen.has('materials');
  const waits = sheets.working || (nets.working && needsNets);
  const ready = pages > 0 && !waits;
  const make = (use: (pdf: ArrayBuffer) => void): void => {
    setAsked(!ready);
    if (!ready) return;
    const pdf = writePdf(inOrder(chosen), record.name, language);
    // Pages that cannot be written are no pages: why stands in the list.
    if (pdf.ok) use(new Uint8Array(pdf.value).buffer);
  };
  return (
    <>
      <button
        type="button"
        className="btn main"
        aria-disabled={!ready}
        onClick={() => make((pdf) => saveFile(`${fileName(`${record.name} ${say('printing.title')}`)}.pdf`, PDF, pdf))}
      >
        <Icon name="file" />
        {waits ? say('printing.save-soon') : pages === 1 ? say('printing.save-one') : say('printing.save', { pages })}
      </button>
      <button type="button" className="btn" aria-disabled={!ready} onClick={() => make((pdf) => openFile(PDF, pdf))}>
        <Icon name="print" />
        {say('printing.open')}
      </button>
      <p role="status" className="print-told">
        {asked && !ready && say(waits ? 'printing.wait' : 'printing.nothing')}
      </p>
    </>
  );
}

const PDF = 'application/pdf';
