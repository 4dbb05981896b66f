// The board: who stands where, for the projector. Ranking by challenge and of the whole day, or each group's own progress.

import { Link } from 'wouter';
import { useScreenWords } from '../../app/use-words.ts';
import { useSession } from '../../store/use-session.ts';
import './board.css';
import { OpenBoard } from './open-board.tsx';

export default function Board() {
  const words = useScreenWords();
  const record = useSession((session) => session.record);
  if (record !== null && record.challenges.length > 0) return <OpenBoard record={record} />;
  return (
    <div className="page">
      <h1>{words.say('board.title')}</h1>
      <p className="board-empty">{words.say(record === null ? 'frame.no-class' : 'board.no-challenge')}</p>
      <Link className="btn" href="/">
        {words.say('frame.to-start')}
      </Link>
    </div>
  );
}
