// "Which solids were used?": the pieces of the builds that count, by kind.

import { makeSolid } from '@cairnmark/geometry';
import { render } from 'preact';
import { useId, useMemo } from 'preact/hooks';
import { useTalkWords } from '../../../app/talk-words.tsx';
import { colourToken, familyOf } from '../../../drawing/family.ts';
import { kitScale } from '../../../drawing/kit-scale.ts';
import { SolidPicture } from '../../../parts/solid-picture.tsx';
import type { Scene } from '../scene.ts';
import type { Bar } from './draw-used.ts';
import { drawUsed } from './draw-used.ts';
import { graphsFor } from './graph-choice.ts';
import type { UsedKind } from './graph-data.ts';
import { fewBars } from './graph-data.ts';
import { GraphFigure } from './graph-figure.tsx';
import { axisNumber } from './graph-texts.ts';
import type { Sheet } from './sheet.ts';

export function UsedFigure({ used, scene }: { readonly used: readonly UsedKind[]; readonly scene: Scene }) {
  const { say } = useTalkWords();
  const { challenge, words } = scene;
  const { barsMost, inOnes } = graphsFor(challenge.gradePreset);
  const id = useId();
  const others = words.capital(say('graphs.others'));
  const bars = useMemo(() => barsOf(fewBars(used, barsMost), scene, others, id), [used, barsMost, scene, others, id]);
  const draw = useMemo(
    () => (sheet: Sheet) => drawUsed({ bars, inOnes, number: axisNumber(words) }, sheet),
    [bars, inOnes, words],
  );
  const unused = challenge.kit.kinds.filter(({ id }) => !used.some(({ kind }) => kind === id));
  return (
    <GraphFigure
      title={say('graphs.used')}
      lede={[
        say('graphs.used-lede', { count: used.reduce((sum, { pieces }) => sum + pieces, 0) }),
        say('graphs.used-in-ones'),
      ]}
      alt={say('graphs.used-alt', {
        values: bars.map(({ name, pieces }) => say('graphs.value-of', { value: name, groups: pieces })).join('; '),
      })}
      draw={draw}
      table={{
        titles: [say('graphs.solid'), say('graphs.pieces')],
        rows: [
          ...used.map(({ kind, pieces }) => [kindName(kind, scene, others), String(pieces)]),
          ...unused.map(({ name }) => [name, '0']),
        ],
      }}
    >
      {unused.length > 0 && (
        <p className="mut">{say('graphs.unused', { kinds: words.listed(unused.map(({ name }) => name)) })}</p>
      )}
    </GraphFigure>
  );
}

const kindName = (kind: string | null, { challenge }: Scene, others: string): string =>
  kind === null ? others : (challenge.kit.kinds.find(({ id }) => id === kind)?.name ?? kind);

function barsOf(used: readonly UsedKind[], scene: Scene, others: string, id: string): readonly Bar[] {
  const solids = new Map(
    scene.challenge.kit.kinds.flatMap(({ id, solid }) => {
      const made = makeSolid(solid);
      return made.ok ? [[id, made.value] as const] : [];
    }),
  );
  const scale = kitScale(solids.values());
  return used.map(({ kind, pieces }) => {
    const solid = kind === null ? undefined : solids.get(kind);
    return {
      name: kindName(kind, scene, others),
      pieces,
      token: solid === undefined ? '--paper-3' : colourToken(familyOf(solid.id)),
      picture:
        solid === undefined
          ? null
          : () => pictured(<SolidPicture solid={solid} scale={scale} name={`${id}-${kind}`} />),
    };
  });
}

/** The picture as an element of its own, for a drawing that is no component. */
function pictured(picture: ReturnType<typeof SolidPicture>): Element {
  const place = document.createElementNS('http://www.w3.org/2000/svg', 'g');
  render(picture, place);
  return place;
}
