// The rules of the game in sentences, with the cautions for games in which children run.

import { isLocked } from '../../store/challenge-lock.ts';
import { withGame } from '../../store/supply-changes.ts';
import { useSession } from '../../store/use-session.ts';
import { useGame } from './game.ts';
import { ToldHere } from './told-here.tsx';

export function GameRules() {
  const { at, say, rule, words, inClass } = useGame();
  const rules = at.challenge.requirements.filter((one) => {
    return one.kind === 'only-earned' || (one.kind === 'measured' && one.measure.startsWith('earned:'));
  });
  return (
    <section className="supply-rules">
      <h2>{say('supply-game.rules')}</h2>
      <ul>
        {words.game(rule).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
        {rules.map((one) => (
          <li key={one.id}>{words.capital(inClass.statedRule(one))}</li>
        ))}
      </ul>
      <ul className="note">
        <li>{words.cautions.running}</li>
        <li>{words.cautions['school-rules']}</li>
      </ul>
      <ChooseAgain />
    </section>
  );
}

/** While nothing hangs on the game, the teacher may choose another, or none. */
function ChooseAgain() {
  const { at, say, events, make } = useGame();
  const role = useSession((session) => session.role);
  if (role !== 'teacher' || events.length > 0 || isLocked(at.record, at.challenge.id)) return null;
  return (
    <>
      <button
        type="button"
        className="btn"
        onClick={() => make('rules', withGame(at.challenge.id, null), say('supply-game.not-kept'))}
      >
        {say('supply-game.choose-again')}
      </button>
      <ToldHere place="rules" />
    </>
  );
}
