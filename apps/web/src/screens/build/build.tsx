// The build screen.

import { useScreenWords } from '../../app/use-words.ts';

export default function Build() {
  const words = useScreenWords();
  return <h1 className="page">{words.say('build.title')}</h1>;
}
