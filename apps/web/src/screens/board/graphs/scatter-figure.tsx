// "Does a small base mean a high tower?": height against base, a dot a build.

import { useMemo } from 'preact/hooks';
import { useTalkWords } from '../../../app/talk-words.tsx';
import type { Scene } from '../scene.ts';
import { columnTitle } from '../texts.ts';
import { drawScatter } from './draw-scatter.ts';
import type { BuildDot } from './graph-data.ts';
import { GraphFigure } from './graph-figure.tsx';
import { axisNumber, nameOf, namesTexts, scaleFor } from './graph-texts.ts';
import type { Sheet } from './sheet.ts';

export function ScatterFigure({ builds, scene }: { readonly builds: readonly BuildDot[]; readonly scene: Scene }) {
  const { say } = useTalkWords();
  const { words, inClass, screen } = scene;
  const titled = (measure: string): string =>
    say('graphs.with-unit', { measure: inClass.label(measure), unit: inClass.unit(measure).name });
  const [baseTitle, heightTitle] = [titled('base-area'), titled('height')];
  const draw = useMemo(() => {
    const drawing = {
      dots: builds.map(({ line, base, height }) => ({ base, height, name: nameOf(line, scene) })),
      labels: (names: readonly string[]) => namesTexts(names, scene, say),
      front: null,
      baseTitle,
      heightTitle,
      baseScale: scaleFor('base-area', scene),
      heightScale: scaleFor('height', scene),
      number: axisNumber(words),
    };
    return (sheet: Sheet) => drawScatter(drawing, sheet);
  }, [builds, scene, words, say, baseTitle, heightTitle]);
  const told = builds.map((build) => ({
    group: nameOf(build.line, scene),
    base: factText('base-area', build, scene),
    height: factText('height', build, scene),
  }));
  return (
    <GraphFigure
      title={say('graphs.scatter')}
      lede={[say('graphs.scatter-lede')]}
      alt={say('graphs.scatter-alt', { values: told.map((one) => say('graphs.scatter-of', one)).join('; ') })}
      draw={draw}
      table={{
        titles: [screen.say('board.group'), columnTitle('base-area', scene), columnTitle('height', scene)],
        rows: told.map(({ group, base, height }) => [group, base, height]),
      }}
    />
  );
}

function factText(measure: string, { line }: BuildDot, { inClass }: Scene): string {
  const fact = line.report?.facts.find(({ id }) => id === measure);
  return fact === undefined || fact.value === null ? '' : inClass.amount(measure, fact.value, fact.tolerance);
}
