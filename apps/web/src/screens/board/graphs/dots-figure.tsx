// "How high?": the line plot of what the ranking asks for first.

import { POINTS_ID } from '@cairnmark/engine';
import { useMemo } from 'preact/hooks';
import { useTalkWords } from '../../../app/talk-words.tsx';
import { MOST_ROWS } from '../pages.ts';
import type { Scene } from '../scene.ts';
import { columnTitle } from '../texts.ts';
import { drawDots } from './draw-dots.ts';
import type { Dot } from './graph-data.ts';
import { stacksOf, unitOfFirst } from './graph-data.ts';
import { GraphFigure } from './graph-figure.tsx';
import { axisNumber, nameOf, scaleFor, valueText } from './graph-texts.ts';
import type { Sheet } from './sheet.ts';

export function DotsFigure({ dots, scene }: { readonly dots: readonly Dot[]; readonly scene: Scene }) {
  const { say } = useTalkWords();
  const { challenge, words, inClass, screen } = scene;
  const { by } = challenge.ranking.first;
  const scaleOf = useMemo(() => scaleFor(by, scene), [by, scene]);
  const stacks = useMemo(
    () =>
      stacksOf(dots, scaleOf.finest).map((stack) => ({
        at: stack.at,
        count: stack.dots.length,
        names: words.listed(stack.dots.map(({ line }) => nameOf(line, scene))),
        value: stack.dots[0] === undefined ? '' : valueText(stack.dots[0].line, scene),
      })),
    [dots, scaleOf, scene, words],
  );
  const withNames = stacks.length <= MOST_ROWS && dots.length <= NAMES_MOST;
  const unit = by === POINTS_ID ? inClass.label(by) : unitOfFirst(scene).name;
  const draw = useMemo(() => {
    const number = axisNumber(words);
    const labelled = stacks.map(({ names, value, ...stack }) => ({ ...stack, label: `${names} ${bare(value)}` }));
    return (sheet: Sheet) => drawDots({ stacks: labelled, scaleOf, unit, number, withNames }, sheet);
  }, [stacks, scaleOf, unit, withNames, words]);
  const values = stacks.map(({ names, value }) => say('graphs.value-of', { value, groups: names })).join('; ');
  const ends = [dots[0], dots.at(-1)].map((dot) => (dot === undefined ? '' : valueText(dot.line, scene)));
  return (
    <GraphFigure
      title={by === 'height' ? say('graphs.dots-height') : say('graphs.dots', { measure: columnTitle(by, scene) })}
      lede={[
        say('graphs.dots-lede'),
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

/** More names than this stand in the table alone. */
const NAMES_MOST = 16;

/** The number alone: the unit stands on the ruler. */
const bare = (value: string): string => value.replace(/\s[^\d\s]+$/u, '');

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
