// The score-card screen.

import { useScreenWords } from '../../app/use-words.ts';

export default function ScoreCard() {
  const words = useScreenWords();
  return <h1 className="page">{words.say('score-card.title')}</h1>;
}
