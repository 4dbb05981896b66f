// A place on the card for how near the build comes to the best possible one. Nothing of it is loaded where nobody is told.

import { Arriving } from '../../app/arriving.tsx';
import { TalkSpeaking } from '../../app/talk-words.tsx';
import { useCard } from './card.ts';

/** From the group's first result on: before it, the part would lead the group to the tower without a build. */
export function NearBestLine() {
  const { at } = useCard();
  const { challenge, attempt, tries } = at;
  const hasResult = tries.some(({ state, confirmedBy }) => state.kind === 'stood' && confirmedBy !== null);
  if (challenge.bestShown !== true || !hasResult || attempt.state.kind !== 'stood') return null;
  return (
    <TalkSpeaking>
      <Arriving ask={loadNear}>{(NearBest) => <NearBest />}</Arriving>
    </TalkSpeaking>
  );
}

const loadNear = async () => (await import('./near-best.tsx')).default;
