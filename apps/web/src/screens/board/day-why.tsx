// Why a group has its place in the day: what each challenge brought to it and to the group above.

import type { RefObject } from 'preact';
import { Dialog } from '../../parts/dialog.tsx';
import { comparedWith } from './compared.ts';
import type { DayScene } from './day.ts';
import { dayChallenges, resultOf, withoutText } from './day.ts';
import { challengeName, groupName } from './scene.ts';

export function DayWhy({
  dialog,
  group,
  scene,
}: {
  readonly dialog: RefObject<HTMLDialogElement>;
  readonly group: string | null;
  readonly scene: DayScene;
}) {
  const { record, score, screen, words } = scene;
  const standing = score.day.find((one) => one.group === group);
  const place = standing?.place ?? null;
  const title = place === null ? screen.say('board.day') : screen.say('board.why', { place: words.ordinal(place) });
  const pair = standing === undefined ? null : comparedWith(standing, score.day);
  return (
    <Dialog dialog={dialog} title={standing === undefined ? title : `${groupName(record, standing.group)}. ${title}`}>
      <div className="board-why">
        <p className="mut">{words.day(record.day, (id) => challengeName(record, id)).join(' ')}</p>
        {pair === null ? (
          <p>{screen.say('board.why-alone')}</p>
        ) : (
          <table>
            <thead>
              <tr>
                <td className="board-corner" />
                {pair.map((one) => (
                  <th key={one.group} scope="col" className="board-number">
                    {groupName(record, one.group)}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {dayChallenges(scene).map(({ id, name }) => (
                <tr key={id}>
                  <th scope="row">{name}</th>
                  {pair.map((one) => (
                    <td key={one.group} className="board-number">
                      {valueText(resultOf(one, id)) ?? withoutText(one.group, id, scene)}
                    </td>
                  ))}
                </tr>
              ))}
              <tr>
                <th scope="row">{screen.say('board.together')}</th>
                {pair.map((one) => (
                  <td key={one.group} className="board-number">
                    <b>{valueText(one.total)}</b>
                  </td>
                ))}
              </tr>
            </tbody>
          </table>
        )}
      </div>
    </Dialog>
  );

  function valueText(value: number | null): string | null {
    return value === null ? null : words.dayValue(record.day, value);
  }
}
