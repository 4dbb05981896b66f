// What pieces are made of, for one kind or for several at once, and what each choice does.

import type { KindOfPiece } from '@cairnmark/engine';
import { DENSITY_G_PER_CM3_LEAST, DENSITY_G_PER_CM3_MOST, FRICTION_MOST } from '@cairnmark/formats';
import type { Material } from '@cairnmark/geometry';
import { Choice } from '../../parts/choice.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { changeMaterial } from '../../store/kit-materials.ts';
import { common } from './common.ts';
import { PaperFields } from './paper-fields.tsx';
import { SurfaceField } from './surface-field.tsx';
import { useKit } from './use-kit.ts';

export function MaterialFields({ kinds }: { readonly kinds: readonly KindOfPiece[] }) {
  const { at, say, make, use, ruler, words } = useKit();
  const ids = kinds.map(({ id }) => id);
  const [first] = kinds;
  if (first === undefined) return null;
  const text = say('kit.did-material', { kind: kinds.length === 1 ? first.name : say('kit.all-kinds') });
  const change = (next: (kind: KindOfPiece) => KindOfPiece): void => {
    make(changeMaterial(at.challenge.id, ids, next), text);
  };
  const changeStuff = (next: (material: Material) => Material): void =>
    change((kind) => ({ ...kind, material: next(kind.material) }));
  const made = common(kinds.map(({ material }) => material.kind));
  const densities = kinds.flatMap(({ material }) => (material.kind === 'full' ? [material.densityGPerCm3] : []));
  const limits = (least: number, most: number) => ({ least: words.number(least), most: words.number(most) });
  return (
    <div className="kit-material">
      <fieldset disabled={use.locked}>
        <legend className="vh">{say('kit.material-of')}</legend>
        <Choice
          label={say('kit.made-of')}
          options={MADE.map((id) => ({ id, text: say(`made.${id}`) }))}
          chosen={made}
          choose={(id) => changeStuff((material) => (material.kind === id ? material : USUAL[id]))}
        />
        {made === 'full' && <p className="mut">{say('made.full-what')}</p>}
        {made !== 'full' && <PaperFields kinds={kinds} change={changeStuff} />}
        {densities.length > 0 && (
          <div>
            <NumberField
              label={say('kit.density')}
              value={common(densities)}
              unit="ratio"
              unitName="g/cm³"
              ruler={ruler}
              least={DENSITY_G_PER_CM3_LEAST}
              most={DENSITY_G_PER_CM3_MOST}
              disabled={use.locked}
              change={(densityGPerCm3) =>
                changeStuff((material) => (material.kind === 'full' ? { ...material, densityGPerCm3 } : material))
              }
            />
            <p className="mut">{say('kit.density-what', limits(DENSITY_G_PER_CM3_LEAST, DENSITY_G_PER_CM3_MOST))}</p>
          </div>
        )}
        <SurfaceField kinds={kinds} />
        <div>
          <NumberField
            label={say('kit.friction')}
            value={common(kinds.map(({ friction }) => friction))}
            unit="ratio"
            ruler={ruler}
            least={0}
            most={FRICTION_MOST}
            disabled={use.locked}
            change={(friction) => change((kind) => ({ ...kind, friction }))}
          />
          <p className="mut">{say('kit.friction-what', limits(0, FRICTION_MOST))}</p>
        </div>
      </fieldset>
    </div>
  );
}

const MADE = ['folded-paper', 'full'] as const;

/** What a kind begins with when it becomes of another material: thin card, and foam. */
const USUAL: Readonly<Record<Material['kind'], Material>> = {
  'folded-paper': { kind: 'folded-paper', gramsPerM2: 160, base: 'closed', printedNet: false },
  full: { kind: 'full', densityGPerCm3: 0.03 },
};
