// "Did trying again help?": the first try and the best try of each group.

import { useMemo } from 'preact/hooks';
import { useTalkWords } from '../../../app/talk-words.tsx';
import type { Scene } from '../scene.ts';
import { drawTries } from './draw-tries.ts';
import type { Again } from './graph-data.ts';
import { GraphFigure } from './graph-figure.tsx';
import { amountText, bare, nameOf, namesTexts, scaleFor } from './graph-texts.ts';
import type { Sheet } from './sheet.ts';

export function TriesFigure({ groups, scene }: { readonly groups: readonly Again[]; readonly scene: Scene }) {
  const { say } = useTalkWords();
  const { challenge, screen, words } = scene;
  const told = useMemo(
    () =>
      groups.map((group) => ({
        ...group,
        name: nameOf(group.line, scene),
        firstLabel: amountText(group.first, scene),
        bestLabel: amountText(group.best, scene),
      })),
    [groups, scene],
  );
  const titles = [say('graphs.first-try'), say('graphs.best-try')] as const;
  const [firstTitle, bestTitle] = titles;
  const draw = useMemo(() => {
    const scaleOf = scaleFor(challenge.ranking.first.by, scene);
    const again = told.filter(({ tries }) => tries > 1);
    const firstLabels = byValue(again, ({ first }) => first).map(([at, [one]]) => ({
      at,
      texts: [one?.firstLabel ?? ''],
    }));
    const bestLabels = byValue(told, ({ best }) => best).map(([at, alike]) => {
      const names = namesTexts(
        alike.map(({ name }) => name),
        scene,
        say,
      );
      const value = alike[0]?.bestLabel ?? '';
      const label = (groups: string, told: string): string => say('graphs.value-of', { value: groups, groups: told });
      return { at, texts: [...names.map((one) => label(one, value)), label(names.at(-1) ?? '', bare(value))] };
    });
    const drawing = { groups: told, firstLabels, bestLabels, scaleOf, firstTitle, bestTitle };
    return (sheet: Sheet) => drawTries(drawing, sheet);
  }, [told, scene, challenge, say, firstTitle, bestTitle]);
  const again = groups.filter(({ tries }) => tries > 1);
  const values = told.map(({ name, tries, firstLabel, bestLabel }) =>
    tries > 1
      ? say('graphs.tries-from', { group: name, first: firstLabel, best: bestLabel })
      : say('graphs.tries-one', { group: name, best: bestLabel }),
  );
  return (
    <GraphFigure
      title={say('graphs.tries')}
      lede={[
        say('graphs.tries-lede', {
          again: again.length,
          better: again.filter(({ first, best }) => first !== best).length,
        }),
      ]}
      alt={say('graphs.tries-alt', { values: values.join('; ') })}
      draw={draw}
      table={{
        titles: [screen.say('board.group'), ...titles.map(words.capital), screen.say('board.tries')],
        rows: told.map(({ name, tries, firstLabel, bestLabel }) => [name, firstLabel, bestLabel, String(tries)]),
      }}
    />
  );
}

function byValue<T>(items: readonly T[], value: (item: T) => number): readonly (readonly [number, readonly T[]])[] {
  const values = [...new Set(items.map(value))];
  return values.map((one) => [one, items.filter((item) => value(item) === one)]);
}
