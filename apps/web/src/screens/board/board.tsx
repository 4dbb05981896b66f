// The board: who stands where, for the projector. Ranking by challenge and of the whole day, or each group's own progress.

import { useCardWords, withCardWords } from '../../app/card-words.tsx';
import { NoClass } from '../../parts/no-class.tsx';
import { useSession } from '../../store/use-session.ts';
import './bars.css';
import './below.css';
import './board.css';
import './rank.css';
import './narrow.css';
import { OpenBoard } from './open-board.tsx';

export default withCardWords(Board);

function Board() {
  const words = useCardWords();
  const record = useSession((session) => session.record);
  if (record === null) return <NoClass />;
  if (record.challenges.length > 0) return <OpenBoard record={record} />;
  return (
    <div className="page">
      <h1>{words.say('board.title')}</h1>
      <p>{words.say('board.no-challenge')}</p>
    </div>
  );
}
