// "How high?": the line plot of what the ranking asks for first.

import { POINTS_ID } from '@cairnmark/engine';
import { useMemo } from 'preact/hooks';
import { useTalkWords } from '../../../app/talk-words.tsx';
import { MOST_ROWS } from '../pages.ts';
import type { Scene } from '../scene.ts';
import { columnTitle } from '../texts.ts';
import { drawDots } from './draw-dots.ts';
import type { Dot, Stack } from './graph-data.ts';
import { stacksOf, unitOfFirst } from './graph-data.ts';
import { GraphFigure } from './graph-figure.tsx';
import { axisNumber, bare, nameOf, namesTexts, scaleFor, valueText } from './graph-texts.ts';
import type { Sheet } from './sheet.ts';

export function DotsFigure({ dots, scene }: { readonly dots: readonly Dot[]; readonly scene: Scene }) {
  const { say } = useTalkWords();
  const { challenge, words, inClass, screen } = scene;
  const { by } = challenge.ranking.first;
  const scaleOf = useMemo(() => scaleFor(by, scene), [by, scene]);
  const stacked = useMemo(() => stacksOf(dots, scaleOf.finest), [dots, scaleOf]);
  const step = coarseStep(stacked, scaleOf.finest, scene);
  const stacks = useMemo(
    () =>
      stacked.map((stack) => ({
        at: stack.at,
        count: stack.dots.length,
        names: namesTexts(
          stack.dots.map(({ line }) => nameOf(line, scene)),
          scene,
          say,
        ),
        value: stackValue(stack, step, scene),
      })),
    [stacked, step, scene, say],
  );
  const withNames = stacks.length <= MOST_ROWS && dots.length <= NAMES_MOST;
  const unit = by === POINTS_ID ? inClass.label(by) : unitOfFirst(scene).name;
  const draw = useMemo(() => {
    const number = axisNumber(words);
    const labelled = stacks.map(({ names, value, ...stack }) => ({
      ...stack,
      labels: names.map((text) => say('graphs.value-of', { value: text, groups: bare(value) })),
    }));
    return (sheet: Sheet) => drawDots({ stacks: labelled, scaleOf, unit, number, withNames }, sheet);
  }, [stacks, scaleOf, unit, withNames, words, say]);
  const values = stacks.map(({ names, value }) => say('graphs.value-of', { value, groups: names[0] ?? '' })).join('; ');
  const ends = [dots[0], dots.at(-1)].map((dot) => (dot === undefined ? '' : valueText(dot.line, scene)));
  return (
    <GraphFigure
      title={by === 'height' ? say('graphs.dots-height') : say('graphs.dots', { measure: columnTitle(by, scene) })}
      lede={[
        say('graphs.dots-lede'),
        ...(step === null ? [] : [say('graphs.dots-rounded', { step: inClass.exactAmount(by, step) })]),
        ...errorTold(dots, scene).map((error) => say('graphs.dots-error', { error })),
        ...(withNames ? [] : [say('graphs.names-in-table')]),
      ]}
      alt={say('graphs.dots-alt', { measure: inClass.label(by), from: ends[0] ?? '', to: ends[1] ?? '', values })}
      draw={draw}
      table={{
        titles: [screen.say('board.group'), columnTitle(by, scene)],
        rows: [...dots].reverse().map(({ line }) => [nameOf(line, scene), valueText(line, scene)]),
      }}
    />
  );
}

/** The division of the line plot, in the unit of the engine, where it moves a dot off the value that was read; else null. */
function coarseStep(stacks: readonly Stack[], finest: number, scene: Scene): number | null {
  const { size } = unitOfFirst(scene);
  const moved = stacks.some(({ at, dots }) => dots.some(({ value }) => Math.abs(at - value) * size > SAME));
  return moved ? finest * size : null;
}

/** In the unit of the engine (mm, a point): less than anybody reads. */
const SAME = 1e-6;

function stackValue({ at, dots }: Stack, step: number | null, scene: Scene): string {
  const [first] = dots;
  if (first === undefined) return '';
  if (step === null) return valueText(first.line, scene);
  return scene.inClass.exactAmount(scene.challenge.ranking.first.by, at * unitOfFirst(scene).size);
}

/** More names than this stand in the table alone. */
const NAMES_MOST = 16;

/** The measuring error, where all dots have the same. */
function errorTold(dots: readonly Dot[], { challenge, inClass }: Scene): readonly string[] {
  const { by } = challenge.ranking.first;
  if (by === POINTS_ID) return [];
  const errors = dots.map(({ line }) =>
    inClass.error(by, line.report?.facts.find(({ id }) => id === by)?.tolerance ?? 0),
  );
  const [first] = errors;
  return first === undefined || first === '' || errors.some((error) => error !== first) ? [] : [first];
}
