// The board screen.

import { useScreenWords } from '../../app/use-words.ts';

export default function Board() {
  const words = useScreenWords();
  return <h1 className="page">{words.say('board.title')}</h1>;
}
