// The paper, how large the writing is, and how many copies.

import type { Ruler } from '@cairnmark/geometry';
import { PAPER_SIZES } from '@cairnmark/print';
import { usePlanWords } from '../../app/plan-words.ts';
import { Choice } from '../../parts/choice.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { PUPILS_MOST } from './settings.ts';
import type { Printing } from './use-printing.ts';

export function PaperFields({ printing, ruler }: { readonly printing: Printing; readonly ruler: Ruler }) {
  const { say } = usePlanWords();
  const { settings, set } = printing;
  return (
    <section className="print-fields" aria-label={say('printing.paper')}>
      <Choice
        label={say('printing.paper')}
        options={PAPER_SIZES.map((id) => ({ id, text: say(`printing.paper-${id}`) }))}
        chosen={settings.paper}
        choose={(paper) => set({ paper })}
      />
      <Choice
        label={say('printing.letters')}
        options={(['usual', 'large'] as const).map((id) => ({ id, text: say(`printing.letters-${id}`) }))}
        chosen={settings.print}
        choose={(print) => set({ print })}
      />
      <Choice
        label={say('printing.copies')}
        options={(['needed', 'one'] as const).map((id) => ({ id, text: say(`printing.copies-${id}`) }))}
        chosen={settings.copies}
        choose={(copies) => set({ copies })}
      />
      <NumberField
        label={say('printing.pupils')}
        value={settings.pupils}
        unit="count"
        unitName=""
        whole
        least={1}
        most={PUPILS_MOST}
        ruler={ruler}
        change={(pupils) => set({ pupils })}
      />
    </section>
  );
}
