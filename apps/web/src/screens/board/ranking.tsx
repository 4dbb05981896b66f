// The ranking of a challenge: a ruled table with bars on a ruler, those out of the ranking below, and what else to know.

import { useCallback, useMemo } from 'preact/hooks';
import { Decisions } from './decisions.tsx';
import { drawingOf } from './drawing.ts';
import { fillsOf, Legend } from './legend.tsx';
import type { BoardLine } from './lines.ts';
import { NO_MARKS, nearMarks, shownMarks } from './near.ts';
import { NumbersTable } from './numbers-table.tsx';
import { Pager } from './pager.tsx';
import { RankingTable } from './ranking-table.tsx';
import type { Scene } from './scene.ts';
import { revealedText } from './texts.ts';
import { Tools } from './tools.tsx';
import { useAsked } from './use-asked.ts';
import type { Freezing } from './use-frozen.ts';
import { useRows } from './use-rows.ts';
import { JudgeWarnings } from './warnings.tsx';
import { Why } from './why.tsx';

export function Ranking({
  scene,
  lines,
  freezing,
}: {
  readonly scene: Scene;
  readonly lines: readonly BoardLine[];
  readonly freezing: Freezing;
}) {
  const { record, challenge, words, inClass, screen } = scene;
  const rows = useRows(lines, record, challenge.id);
  const drawing = useMemo(() => drawingOf(lines, scene), [lines, scene]);
  const bars = useMemo(() => [...drawing.bars.values()], [drawing]);
  const fills = useMemo(() => fillsOf(bars, scene), [bars, scene]);
  const near = useMemo(() => (rows.placesHidden ? NO_MARKS : nearMarks(lines)), [lines, rows.placesHidden]);
  const marks = shownMarks(near, lines, rows.isShown);
  const isMarked = rows.pages[rows.page]?.some(({ group }) => marks.has(group)) ?? false;
  const asked = useAsked();
  const tell = useCallback((place: number): string => revealedText(place, lines, scene), [lines, scene]);
  const line = lines.find(({ group }) => group === asked.group) ?? null;
  return (
    <>
      <Tools rows={rows} freezing={freezing} tell={tell}>
        {screen.say('board.order', { order: inClass.order(challenge.ranking) })}
      </Tools>
      <JudgeWarnings scene={scene} />
      <RankingTable
        scene={scene}
        lines={lines}
        rows={rows}
        drawing={drawing}
        fills={fills}
        marks={marks}
        ask={rows.isWhole ? asked.ask : null}
      />
      <div className="board-foot">
        <Legend bars={bars} fills={fills} scene={scene} withNear={rows.dense && isMarked} />
        <Pager rows={rows} />
      </div>
      <Decisions scene={scene} groups={lines.filter(rows.isShown).map(({ group }) => group)} />
      {(rows.isWhole || rows.placesHidden) && (
        <NumbersTable scene={scene} lines={rows.pages.flat()} withPlaces={!rows.placesHidden} />
      )}
      <Why dialog={asked.dialog} line={line} lines={lines} scene={scene} title={titleOf(line)} />
    </>
  );

  function titleOf(one: BoardLine | null): string {
    if (one === null || one.place === null) return screen.say('board.title');
    return screen.say('board.why', { place: words.ordinal(one.place) });
  }
}
