// What folded paper asks for: its weight, an open or closed base, whether it was cut from a printed net.

import type { KindOfPiece } from '@cairnmark/engine';
import { PAPER_G_PER_M2_LEAST, PAPER_G_PER_M2_MOST } from '@cairnmark/formats';
import type { Material, Solid } from '@cairnmark/geometry';
import { Choice } from '../../parts/choice.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { common } from './common.ts';
import { useKit } from './use-kit.ts';

type Paper = Extract<Material, { kind: 'folded-paper' }>;

export function PaperFields({
  kinds,
  change,
}: {
  readonly kinds: readonly KindOfPiece[];
  readonly change: (next: (material: Material) => Material) => void;
}) {
  const { say, ruler, use, words, solids } = useKit();
  const papers = kinds.flatMap(({ material }) => (material.kind === 'folded-paper' ? [material] : []));
  const shapes = kinds.flatMap(({ id }) => solids.get(id) ?? []);
  const changePaper = (next: Partial<Paper>): void =>
    change((material) => (material.kind === 'folded-paper' ? { ...material, ...next } : material));
  const bases = shapes.filter(({ centroids }) => centroids.openShell !== null);
  const [only] = kinds.length === 1 ? shapes : [];
  if (papers.length === 0) return null;
  return (
    <>
      {only !== undefined && isRound(only) && (
        <p className="note">{say(hasNoNet(only) ? 'kit.paper-ball' : 'kit.paper-round')}</p>
      )}
      <div>
        <NumberField
          label={say('kit.grams')}
          value={common(papers.map(({ gramsPerM2 }) => gramsPerM2))}
          unit="ratio"
          unitName="g"
          ruler={ruler}
          least={PAPER_G_PER_M2_LEAST}
          most={PAPER_G_PER_M2_MOST}
          disabled={use.locked}
          change={(gramsPerM2) => changePaper({ gramsPerM2 })}
        />
        <p className="mut">
          {say('kit.grams-what', {
            least: words.number(PAPER_G_PER_M2_LEAST),
            most: words.number(PAPER_G_PER_M2_MOST),
          })}
        </p>
      </div>
      <div>
        {bases.length > 0 && (
          <Choice
            label={say('kit.base')}
            options={BASES.map((id) => ({ id, text: say(`base.${id}`) }))}
            chosen={common(papers.map(({ base }) => base))}
            choose={(base) => changePaper({ base })}
          />
        )}
        <p className="mut">{say(bases.length > 0 ? 'base-what' : 'kit.no-base')}</p>
      </div>
      {(only === undefined || !hasNoNet(only)) && (
        <div>
          <Choice
            label={say('kit.printed')}
            options={PRINTED.map((id) => ({ id, text: say(`printed.${id}`) }))}
            chosen={common(papers.map(({ printedNet }) => (printedNet ? 'yes' : 'no')))}
            choose={(id) => changePaper({ printedNet: id === 'yes' })}
          />
          <p className="mut">{say('printed-what')}</p>
        </div>
      )}
    </>
  );
}

const BASES = ['closed', 'open'] as const;
const PRINTED = ['yes', 'no'] as const;

const isRound = ({ curvedSurfaces }: Solid): boolean => curvedSurfaces.length > 0;
/** A ball cannot be cut from flat paper. */
const hasNoNet = ({ curvedSurfaces }: Solid): boolean => curvedSurfaces.some(({ net }) => net === 'none');
