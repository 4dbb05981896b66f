// A try in a sentence or two: of how many pieces, how high, how long it stood.

import type { Attempt, Challenge, ClassRecord } from '@cairnmark/engine';
import { usePlanWords } from '../../app/plan-words.ts';
import { useBuildWords } from '../../app/use-build-words.ts';
import { useScreenWords } from '../../app/use-words.ts';
import { secondsOf } from '../../store/observed-changes.ts';

export function TrySentences({
  attempt,
  challenge,
  record,
}: {
  readonly attempt: Attempt;
  readonly challenge: Challenge;
  readonly record: ClassRecord;
}) {
  const { say } = usePlanWords();
  const screen = useScreenWords();
  const { words, inClass } = useBuildWords(challenge, record);
  const { state, layout, observed } = attempt;
  if (state.kind === 'absent' || state.kind === 'not-taking-part') {
    return <p>{screen.say(`score-card.state-${state.kind}`)}.</p>;
  }
  const lengths = observed.heightReadingsMm.map((readingMm) => inClass.exact(readingMm, 'mm'));
  const seconds = secondsOf(attempt);
  const sentences = [
    ...(layout.pieces.length > 0
      ? [say('share.pieces', { pieces: words.counted('pieces', layout.pieces.length) })]
      : []),
    lengths.length > 0 ? say('share.readings', { lengths: words.listed(lengths) }) : say('share.no-reading'),
    ...(seconds === null
      ? []
      : [say(state.kind === 'fell' ? 'share.fell' : 'share.stood', { time: inClass.exact(seconds, 's') })]),
    ...(state.kind === 'fell-before-measuring' ? [`${screen.say('score-card.state-fell-before-measuring')}.`] : []),
  ];
  return <p>{sentences.join(' ')}</p>;
}
