// The whole day: places over all challenges, what each challenge brought, and how they add up.

import { useCallback } from 'preact/hooks';
import { useCardWords } from '../../app/card-words.tsx';
import { useWords } from '../../app/use-words.ts';
import { WHOLE_DAY } from '../../store/board-state.ts';
import { dayRows } from './day.ts';
import { DayTable } from './day-table.tsx';
import { DayWhy } from './day-why.tsx';
import { Pager } from './pager.tsx';
import { SaveTable } from './save-table.tsx';
import type { Shown } from './scene.ts';
import { challengeName } from './scene.ts';
import { revealedText } from './texts.ts';
import { Tools } from './tools.tsx';
import { useAsked } from './use-asked.ts';
import type { Freezing } from './use-frozen.ts';
import { useRows } from './use-rows.ts';
import { Warnings } from './warnings.tsx';

export function DayBoard({ record, score, freezing }: Shown & { readonly freezing: Freezing }) {
  const screen = useCardWords();
  const words = useWords();
  const rows = useRows(score.day, record, WHOLE_DAY);
  const scene = { record, score, words, screen };
  const asked = useAsked();
  const tell = useCallback(
    (place: number): string => revealedText(place, score.day, { record, words, screen }),
    [screen, words, score, record],
  );
  return (
    <>
      <Tools rows={rows} freezing={freezing} tell={tell}>
        {null}
      </Tools>
      <Warnings record={record} warnings={score.warnings} words={words} />
      <DayTable scene={scene} rows={rows} ask={rows.isWhole ? asked.ask : null} />
      <div className="board-foot">
        <p className="day-rule">{words.day(record.day, (id) => challengeName(record, id)).join(' ')}</p>
        <Pager rows={rows} />
        {(rows.isWhole || rows.placesHidden) && (
          <SaveTable
            name={`${record.name} ${screen.say('board.day')}`}
            rows={() => dayRows(rows.pages.flat(), scene, !rows.placesHidden)}
          />
        )}
      </div>
      <DayWhy dialog={asked.dialog} group={asked.group} scene={scene} />
    </>
  );
}
