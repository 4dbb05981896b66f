// How many nets of each solid, and how they lie on the paper.

import type { Ruler } from '@cairnmark/geometry';
import { DEEP_TAB_DEPTH_MM, USUAL_TAB_DEPTH_MM } from '@cairnmark/nets';
import { usePlanWords } from '../../app/plan-words.ts';
import { Choice } from '../../parts/choice.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { arrangementOf, SETS_MOST } from './settings.ts';
import type { Printing } from './use-printing.ts';

const DEPTHS = { usual: USUAL_TAB_DEPTH_MM, deep: DEEP_TAB_DEPTH_MM } as const;

const ARRANGEMENTS = ['sets', 'mixed', 'masters'] as const;

export function NetsOptions({ printing, ruler }: { readonly printing: Printing; readonly ruler: Ruler }) {
  const { say } = usePlanWords();
  const { settings, set } = printing;
  return (
    <div className="print-fields">
      <Choice
        label={say('printing.pieces')}
        options={(['sets', 'stock'] as const).map((id) => ({ id, text: say(`printing.pieces-${id}`) }))}
        chosen={settings.pieces}
        choose={(pieces) => set({ pieces })}
      />
      {settings.pieces === 'sets' && (
        <NumberField
          label={say('printing.sets')}
          value={settings.sets}
          unit="count"
          unitName=""
          whole
          least={1}
          most={SETS_MOST}
          ruler={ruler}
          change={(sets) => set({ sets })}
        />
      )}
      <Choice
        label={say('printing.arrange')}
        options={(settings.pieces === 'sets' ? ARRANGEMENTS : ARRANGEMENTS.slice(1)).map((id) => ({
          id,
          text: say(`printing.arrange-${id}`),
        }))}
        chosen={arrangementOf(settings)}
        choose={(arrange) => set({ arrange })}
      />
      <Choice
        label={say('printing.tabs')}
        options={(['usual', 'deep'] as const).map((id) => ({ id, text: say(`printing.tabs-${id}`) }))}
        chosen={settings.tabDepthMm === DEEP_TAB_DEPTH_MM ? 'deep' : 'usual'}
        choose={(id) => set({ tabDepthMm: DEPTHS[id] })}
      />
      <Choice
        label={say('printing.large')}
        options={(['tell', 'split'] as const).map((id) => ({ id, text: say(`printing.large-${id}`) }))}
        chosen={settings.large}
        choose={(large) => set({ large })}
      />
    </div>
  );
}
