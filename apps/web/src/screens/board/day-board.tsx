// The whole day: places over all challenges, what each challenge brought, and how they add up.

import { useCallback, useRef, useState } from 'preact/hooks';
import { useScreenWords, useWords } from '../../app/use-words.ts';
import { WHOLE_DAY } from '../../store/board-state.ts';
import { dayRows } from './day.ts';
import { DayTable } from './day-table.tsx';
import { DayWhy } from './day-why.tsx';
import { Pager } from './pager.tsx';
import { SaveTable } from './save-table.tsx';
import type { Shown } from './scene.ts';
import { groupName } from './scene.ts';
import { Tools } from './tools.tsx';
import type { Freezing } from './use-frozen.ts';
import { useRows } from './use-rows.ts';
import { Warnings } from './warnings.tsx';

export function DayBoard({ record, score, freezing }: Shown & { readonly freezing: Freezing }) {
  const screen = useScreenWords();
  const words = useWords();
  const rows = useRows(score.day, record, WHOLE_DAY);
  const dialog = useRef<HTMLDialogElement>(null);
  const [asked, setAsked] = useState<string | null>(null);
  const ask = (group: string): void => {
    setAsked(group);
    dialog.current?.showModal();
  };
  const tell = useCallback(
    (place: number): string =>
      screen.say('board.revealed', {
        place: words.ordinal(place),
        groups: words.listed(
          score.day.filter((one) => one.place === place).map(({ group }) => groupName(record, group)),
        ),
      }),
    [screen, words, score, record],
  );
  const challengeName = (id: string): string => record.challenges.find((one) => one.id === id)?.name ?? id;
  const scene = { record, score, words, screen };
  return (
    <>
      <Tools rows={rows} freezing={freezing} tell={tell}>
        {null}
      </Tools>
      <Warnings record={record} warnings={score.warnings} words={words} />
      <DayTable scene={scene} rows={rows} ask={rows.isWhole ? ask : null} />
      <div className="board-foot">
        <p className="day-rule">{words.day(record.day, challengeName).join(' ')}</p>
        <Pager rows={rows} />
        {(rows.isWhole || rows.placesHidden) && (
          <SaveTable
            name={`${record.name} ${screen.say('board.day')}`}
            rows={() => dayRows(rows.pages.flat(), scene, !rows.placesHidden)}
          />
        )}
      </div>
      <DayWhy dialog={dialog} group={asked} scene={scene} />
    </>
  );
}
