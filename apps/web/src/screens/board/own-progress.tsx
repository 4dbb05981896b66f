// Each group against its own earlier tries, in the order of the class: nobody is compared with anybody else. Every bar has
// a scale of its own, so that no two of them can be held against each other.

import { POINTS_ID } from '@cairnmark/engine';
import type { BoardLine } from './lines.ts';
import type { Progress, Try } from './progress.ts';
import { progressOf } from './progress.ts';
import type { Scene } from './scene.ts';
import { groupName } from './scene.ts';
import { columnTitle } from './texts.ts';

export function OwnProgress({ scene, lines }: { readonly scene: Scene; readonly lines: readonly BoardLine[] }) {
  const { record, challenge, screen } = scene;
  const all = record.groups.flatMap(({ id }) => {
    const line = lines.find(({ group }) => group === id);
    return line === undefined ? [] : [progressOf(line, challenge)];
  });
  return (
    <>
      <p className="mut own-lede">
        {columnTitle(challenge.ranking.first.by, scene)}. {screen.say('board.own-lede')}
      </p>
      <table className="own">
        <thead>
          <tr>
            <th scope="col">{screen.say('board.group')}</th>
            <th scope="col">{screen.say('board.own')}</th>
            <th scope="col">{screen.say('board.tries')}</th>
          </tr>
        </thead>
        <tbody>
          {all.map((progress) => (
            <tr key={progress.group}>
              <th scope="row" className="rank-name">
                {groupName(record, progress.group)}
              </th>
              <td>
                <p>{progressText(progress, scene)}</p>
              </td>
              <td>
                <Tries progress={progress} scene={scene} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

function Tries({ progress: { tries, best }, scene }: { readonly progress: Progress; readonly scene: Scene }) {
  const { screen, inClass, challenge } = scene;
  return (
    <ol className="tries">
      {tries.map((one, k) => (
        <li key={one.report.attempt} className={one === best ? 'best' : undefined}>
          {one.value === null || one.out !== null
            ? screen.say('board.try-out', {
                number: k + 1,
                reason: one.out === null ? '' : inClass.out(one.out, one.report, challenge.requirements),
              })
            : screen.say('board.try-value', { number: k + 1, value: valueText(one, scene) })}
          {one.value !== null && one.out === null && best?.value !== null && best !== null && (
            <i className="try-bar" aria-hidden="true" style={{ width: `${shareOf(one.value, best.value ?? 0)}%` }} />
          )}
        </li>
      ))}
    </ol>
  );
}

/** Of the largest of the two, in percent. */
const shareOf = (value: number, best: number): number =>
  best === 0 ? 0 : Math.max(0, Math.min(100, (100 * value) / Math.max(Math.abs(best), Math.abs(value))));

function progressText({ tries, best, before }: Progress, scene: Scene): string {
  const { screen } = scene;
  if (best === null) return screen.say('board.own-none');
  const value = valueText(best, scene);
  if (tries.length === 1) return screen.say('board.own-one', { value });
  if (before === null) {
    const isFirst = tries.indexOf(best) === 0;
    return isFirst ? screen.say('board.own-first', { value }) : screen.say('board.own-one', { value });
  }
  const number = tries.indexOf(best) + 1;
  const better = screen.say('board.own-better', { number, value, before: valueText(before, scene) });
  return isWithin(best, before) ? `${better} ${screen.say('board.own-within')}` : better;
}

/** Errors of two tries of one group add as the root of the sum of their squares. */
const isWithin = (best: Try, before: Try): boolean =>
  Math.abs((best.value ?? 0) - (before.value ?? 0)) <= Math.hypot(best.error, before.error);

function valueText({ value, error }: Try, { challenge, inClass, words }: Scene): string {
  const { by, roundTo } = challenge.ranking.first;
  if (by === POINTS_ID) return words.counted('points', value ?? 0);
  return roundTo > 0 ? inClass.roundedAmount(by, value ?? 0, roundTo) : inClass.amount(by, value ?? 0, error);
}
