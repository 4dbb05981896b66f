// "Does a small base mean a high tower?": height against base, a dot a build.

import { useMemo } from 'preact/hooks';
import { useTalkWords } from '../../../app/talk-words.tsx';
import { useBest } from '../../../workers/use-best.ts';
import type { BoardLine } from '../lines.ts';
import type { Scene } from '../scene.ts';
import { columnTitle } from '../texts.ts';
import { drawScatter } from './draw-scatter.ts';
import { FrontControl, useFront } from './front-control.tsx';
import type { BuildDot } from './graph-data.ts';
import { GraphFigure } from './graph-figure.tsx';
import { evenNumber, nameOf, namesTexts, scaleFor } from './graph-texts.ts';
import type { Sheet } from './sheet.ts';

export function ScatterFigure({
  builds,
  lines,
  scene,
}: {
  readonly builds: readonly BuildDot[];
  /** All of the challenge, those that are not shown yet among them. */
  readonly lines: readonly BoardLine[];
  readonly scene: Scene;
}) {
  const best = useBest();
  const front = useFront(best, scene);
  const { say } = useTalkWords();
  const { words, inClass, screen } = scene;
  const titled = (measure: string): string =>
    say('graphs.with-unit', { measure: inClass.label(measure), unit: inClass.unit(measure).name });
  const [baseTitle, heightTitle] = [titled('base-area'), titled('height')];
  const draw = useMemo(() => {
    const drawing = {
      dots: builds.map(({ line, base, height }) => ({ base, height, name: nameOf(line, scene) })),
      labels: (names: readonly string[]) => namesTexts(names, scene, say),
      front,
      baseTitle,
      heightTitle,
      baseScale: scaleFor('base-area', scene),
      heightScale: scaleFor('height', scene),
      number: evenNumber(words),
    };
    return (sheet: Sheet) => drawScatter(drawing, sheet);
  }, [builds, front, scene, words, say, baseTitle, heightTitle]);
  const told = builds.map((build) => ({
    group: nameOf(build.line, scene),
    base: factText('base-area', build, scene),
    height: factText('height', build, scene),
  }));
  const corners = (front ?? []).map(({ base, height }) => ({
    base: inClass.amount('base-area', base * inClass.unit('base-area').size, AREA_SHOWN_MM2),
    height: inClass.amount('height', height * inClass.unit('height').size, 0),
  }));
  return (
    <GraphFigure
      title={say('graphs.scatter')}
      lede={[
        say('graphs.scatter-lede'),
        ...(builds.length > NAMES_SURE ? [say('graphs.some-names')] : []),
        ...(front === null ? [] : [say('graphs.front-lede')]),
      ]}
      alt={[
        say('graphs.scatter-alt', { values: told.map((one) => say('graphs.scatter-of', one)).join('; ') }),
        ...(front === null
          ? []
          : [say('graphs.front-alt', { values: corners.map((one) => say('graphs.front-of', one)).join('; ') })]),
      ].join(' ')}
      draw={draw}
      table={{
        titles: [screen.say('board.group'), columnTitle('base-area', scene), columnTitle('height', scene)],
        rows: [
          ...told.map(({ group, base, height }) => [group, base, height]),
          ...corners.map(({ base, height }, k) => [say('graphs.front-row', { number: k + 1 }), base, height]),
        ],
      }}
    >
      <FrontControl best={best} lines={lines} scene={scene} />
    </GraphFigure>
  );
}

/** As many names find room in any drawing, or nearly; of more some may stand in the table alone. */
const NAMES_SURE = 8;

/** mm2: an exact area in tenths of a cm2. */
const AREA_SHOWN_MM2 = 30;

function factText(measure: string, { line }: BuildDot, { inClass }: Scene): string {
  const fact = line.report?.facts.find(({ id }) => id === measure);
  return fact === undefined || fact.value === null ? '' : inClass.amount(measure, fact.value, fact.tolerance);
}
