// The graphs of a challenge, those that its grade reads. They show what the ranking shows: of a frozen board the class of that
// moment, and while places are shown one by one only the groups that are shown by now.

import { isShown } from '@cairnmark/engine';
import { useCallback, useMemo } from 'preact/hooks';
import { TalkSpeaking, useTalkWords } from '../../../app/talk-words.tsx';
import { HelpTexts } from '../../../parts/asked-help.tsx';
import { Icon } from '../../../parts/icon.tsx';
import type { BoardLine } from '../lines.ts';
import type { Scene } from '../scene.ts';
import { revealedText } from '../texts.ts';
import { Tools } from '../tools.tsx';
import type { Freezing } from '../use-frozen.ts';
import { useRows } from '../use-rows.ts';
import { BoxFigure } from './box-figure.tsx';
import { DotsFigure } from './dots-figure.tsx';
import { useMayFront } from './front-control.tsx';
import { graphsFor } from './graph-choice.ts';
import { againOf, buildDots, dotsOf, usedKinds } from './graph-data.ts';
import './graphs.css';
import { ScatterFigure } from './scatter-figure.tsx';
import { TriesFigure } from './tries-figure.tsx';
import { UsedFigure } from './used-figure.tsx';

interface GraphsOf {
  readonly scene: Scene;
  readonly lines: readonly BoardLine[];
  readonly freezing: Freezing;
}

export default function GraphsBoard(props: GraphsOf) {
  return (
    <TalkSpeaking>
      <Graphs {...props} />
    </TalkSpeaking>
  );
}

function Graphs({ scene, lines, freezing }: GraphsOf) {
  const { say } = useTalkWords();
  const { record, challenge } = scene;
  const rows = useRows(lines, record, challenge.id);
  const tell = useCallback((place: number): string => revealedText(place, lines, scene), [lines, scene]);
  const done = rows.reveal?.done ?? null;
  // `isShown` is a new function each time, but what it answers changes with the places shown by now alone.
  const shown = useMemo(() => lines.filter(rows.isShown), [lines, done]);
  const dots = useMemo(() => dotsOf(shown, scene), [shown, scene]);
  const mayFront = useMayFront(scene);
  return (
    <>
      <Tools rows={rows} freezing={freezing} tell={tell} always={dots.length > 0 && <PrintGraphs />} />
      <HelpTexts
        items={[
          [say('graphs.help-table'), say('graphs.table'), say('graphs.no-table')],
          [say('graphs.help-print'), say('graphs.print')],
          ...(mayFront ? [[say('graphs.help-front'), say('graphs.front-show')] as const] : []),
          ...(graphsFor(challenge.gradePreset).box
            ? [[say('graphs.help-quartiles'), say('graphs.quartiles')] as const]
            : []),
        ]}
      />
      {dots.length === 0 ? (
        <p>{done === null ? say('graphs.none') : scene.screen.say('board.not-shown')}</p>
      ) : (
        <Figures lines={lines} shown={shown} dots={dots} scene={scene} />
      )}
    </>
  );
}

function PrintGraphs() {
  const { say } = useTalkWords();
  return (
    <button type="button" className="btn bare graph-button" onClick={() => window.print()}>
      <Icon name="print" />
      {say('graphs.print')}
    </button>
  );
}

function Figures({
  lines,
  shown,
  dots,
  scene,
}: {
  readonly lines: readonly BoardLine[];
  readonly shown: readonly BoardLine[];
  readonly dots: ReturnType<typeof dotsOf>;
  readonly scene: Scene;
}) {
  const { challenge } = scene;
  const choice = graphsFor(challenge.gradePreset);
  const groups = useMemo(() => againOf(shown, scene), [shown, scene]);
  const builds = useMemo(() => buildDots(shown, scene), [shown, scene]);
  const used = useMemo(() => usedKinds(shown, scene), [shown, scene]);
  const bothShown = isShown('base-area', challenge) && isShown('height', challenge);
  return (
    <div className="graphs">
      <DotsFigure dots={dots} scene={scene} />
      {choice.tries && groups.some(({ tries }) => tries > 1) && <TriesFigure groups={groups} scene={scene} />}
      {choice.scatter && bothShown && builds.length > 1 && (
        <ScatterFigure builds={builds} lines={lines} scene={scene} />
      )}
      {used.length > 0 && <UsedFigure used={used} scene={scene} />}
      {choice.box && <BoxFigure dots={dots} scene={scene} />}
    </div>
  );
}
