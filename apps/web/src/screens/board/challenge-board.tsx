// The board of one challenge: its ranking, its graphs, or each group's own progress in it.

import type { Challenge } from '@cairnmark/engine';
import { useMemo } from 'preact/hooks';
import { Arriving } from '../../app/arriving.tsx';
import { useCardWords } from '../../app/card-words.tsx';
import { useBuildWords } from '../../app/use-build-words.ts';
import { useSession } from '../../store/use-session.ts';
import { boardLines } from './lines.ts';
import { OwnProgress } from './own-progress.tsx';
import { Ranking } from './ranking.tsx';
import type { Scene, Shown } from './scene.ts';
import type { Freezing } from './use-frozen.ts';

export function ChallengeBoard({
  record,
  score,
  challenge,
  freezing,
}: Shown & { readonly challenge: Challenge; readonly freezing: Freezing }) {
  const screen = useCardWords();
  const view = useSession((session) => session.board.view);
  const { words, inClass, ruler } = useBuildWords(challenge, record);
  const scene = useMemo(
    (): Scene => ({ record, score, challenge, screen, words, inClass, ruler }),
    [record, score, challenge, screen, words, inClass, ruler],
  );
  const lines = useMemo(() => boardLines(score, challenge), [score, challenge]);
  if (view === 'own') return <OwnProgress scene={scene} lines={lines} freezing={freezing} />;
  if (view === 'graphs') {
    return (
      <Arriving ask={loadGraphs}>{(Graphs) => <Graphs scene={scene} lines={lines} freezing={freezing} />}</Arriving>
    );
  }
  return <Ranking scene={scene} lines={lines} freezing={freezing} />;
}

/** With the library that draws them, which nothing else of the Board needs. */
const loadGraphs = async () => (await import('./graphs/graphs-board.tsx')).default;
