// A screen without a class: says so, and leads to the start.

import { Link } from 'wouter-preact';
import { useScreenWords } from '../app/use-words.ts';

export function NoClass() {
  const words = useScreenWords();
  return (
    <div className="page">
      <h1>{words.say('frame.no-class')}</h1>
      <p>
        <Link className="btn main" href="/">
          {words.say('frame.to-start')}
        </Link>
      </p>
    </div>
  );
}
