// What is folded away under a kind: the other ways to measure it, what it is made of, what was crushed, its 3D model, and the
// way out of the kit.

import type { KindOfPiece } from '@cairnmark/engine';
import type { SchoolCounts, Sizes, Solid } from '@cairnmark/geometry';
import { IDENTITY, massOf } from '@cairnmark/geometry';
import { tabPaper } from '@cairnmark/nets';
import { useMemo } from 'preact/hooks';
import { SaveModel } from '../../parts/save-model.tsx';
import { Crushed } from './crushed.tsx';
import { MaterialFields } from './material-fields.tsx';
import { OtherWays } from './other-ways.tsx';
import { TakeAway } from './take-away.tsx';
import { columnsOf } from './texts.ts';
import { useKit } from './use-kit.ts';
import { waysOf } from './ways.ts';

export function KindDetails({
  kind,
  solid,
  counts,
  put,
  atSlope,
}: {
  readonly kind: KindOfPiece;
  readonly solid: Solid;
  readonly counts: SchoolCounts;
  readonly put: (sizes: Sizes) => readonly string[];
  /** The field of the slope has the focus. */
  readonly atSlope: boolean;
}) {
  const kit = useKit();
  const { say, use, inClass, words } = kit;
  const grams = useMemo(() => massOf(solid, kind.material, tabPaper).massG, [solid, kind.material]);
  return (
    <div className="kit-details">
      <p className="kit-about">
        {say('kit.about', {
          paper: `${columnsOf(solid, kit).paper} ${inClass.unit('paper').name}`,
          faces: inClass.exactAmount('faces', counts.faces),
          edges: inClass.exactAmount('edges', counts.edges),
          corners: inClass.exactAmount('corners', counts.corners),
          grams: words.number(round(grams)),
        })}
      </p>
      {waysOf(kind.solid).length > 0 && !use.locked && (
        <OtherWays kind={kind} solid={solid} put={put} atSlope={atSlope} />
      )}
      <section className="kit-part" aria-label={say('kit.material-of')}>
        <h2>{say('kit.material-of')}</h2>
        <MaterialFields kinds={[kind]} />
      </section>
      <div className="kit-last">
        <Crushed kind={kind} />
        <section className="kit-part" aria-label={say('model.save')}>
          <h2>{say('model.save')}</h2>
          <SaveModel
            name={kind.name}
            pieces={() => [{ name: kind.name, solid, rotation: IDENTITY, shift: [0, 0, 0] }]}
          />
        </section>
        {!use.locked && <TakeAway kind={kind} />}
      </div>
    </div>
  );
}

/** A kitchen scale for letters reads tenths of a gram; a light piece has two figures. */
const round = (grams: number): number => (grams < 1 ? Number(grams.toPrecision(2)) : Math.round(grams * 10) / 10);
