// A challenge without a supply game: says so; the teacher chooses one, where nobody has built yet.

import type { SupplyRule } from '@cairnmark/scoring';
import { useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { usePlanWords } from '../../app/plan-words.ts';
import { useWords } from '../../app/use-words.ts';
import { HelpArea, HelpButton, HelpTexts } from '../../parts/asked-help.tsx';
import { isLocked } from '../../store/challenge-lock.ts';
import { useEdit } from '../../store/edit-class.ts';
import { withGame } from '../../store/supply-changes.ts';
import { useSession } from '../../store/use-session.ts';
import { GAME_ENDS, usualGame } from '../../store/usual-games.ts';
import type { At } from '../../store/where-at.ts';

export function NoGame({ at }: { readonly at: At }) {
  const { say } = usePlanWords();
  const { challenge, record } = at;
  const teacher = useSession((session) => session.role === 'teacher');
  const played = isLocked(record, challenge.id);
  return (
    <HelpArea>
      <div className="page supply supply-no-game">
        <div className="supply-head">
          <div>
            <h1>{say('supply-game.title')}</h1>
            <p>{say('supply-game.no-game', { challenge: challenge.name })}</p>
          </div>
          <HelpButton />
        </div>
        <HelpTexts
          items={[
            [say('supply-game.help-to-build'), say('supply-game.to-build')],
            ...(teacher && !played ? [[say('supply-game.help-play'), say('supply-game.play')] as const] : []),
          ]}
        />
        {!teacher && <p>{say('supply-game.no-game-pupils')}</p>}
        {teacher && played && <p>{say('supply-game.no-game-built')}</p>}
        {teacher && !played && <Games at={at} />}
        <Link className={teacher && !played ? 'btn' : 'btn main'} href="/build">
          {say('supply-game.to-build')}
        </Link>
      </div>
    </HelpArea>
  );
}

function Games({ at }: { readonly at: At }) {
  const { say } = usePlanWords();
  const words = useWords();
  const edit = useEdit();
  const [refused, setRefused] = useState('');
  const play = (game: SupplyRule): void => {
    const [fault] = edit(withGame(at.challenge.id, game));
    setRefused(fault === undefined ? '' : words.issue(fault));
  };
  return (
    <section>
      <h2>{say('supply-game.play')}</h2>
      <ul className="supply-games">
        {GAME_ENDS.map((kind) => (
          <li key={kind}>
            <button type="button" className="btn" onClick={() => play(usualGame(kind))}>
              {say(`supply-game.play-${kind}`)}
            </button>
            <p className="mut">{words.game(usualGame(kind)).join(' ')}</p>
          </li>
        ))}
      </ul>
      <p role="status" className="oops">
        {refused}
      </p>
    </section>
  );
}
