// The pieces that the challenge is built with: how many of what, and the way to the Kit screen.

import { Link } from 'wouter-preact';
import { Fold } from './fold.tsx';
import { useForm } from './form.ts';

export function KitFold() {
  const { challenge, words, say } = useForm();
  const { name, kinds } = challenge.kit;
  const pieces = kinds.reduce((sum, { stock }) => sum + stock, 0);
  const set = say('challenge.kit-set', {
    name,
    kinds: words.counted('kinds', kinds.length),
    pieces: words.counted('pieces', pieces),
  });
  return (
    <Fold title={say('challenge.kit')} set={set}>
      <ul className="chal-list">
        {kinds.map((kind) => (
          <li key={kind.id}>
            {say('challenge.kit-kind', { name: kind.name, pieces: words.counted('pieces', kind.stock) })}
          </li>
        ))}
      </ul>
      <p className="chal-note">{say('challenge.kit-note')}</p>
      <p>
        <Link className="btn" href="/kit">
          {say('challenge.to-kit')}
        </Link>
      </p>
    </Fold>
  );
}
