// What to do next: another try with the same layout, the Board, the card on paper.

import { Link, useLocation } from 'wouter-preact';
import { CardHelp } from '../../app/card-help.tsx';
import { frameHelp } from '../../app/frame-help.ts';
import { HelpButton } from '../../parts/asked-help.tsx';
import { Icon } from '../../parts/icon.tsx';
import { useSession } from '../../store/use-session.ts';
import { ShareDoor } from '../share/share-door.tsx';
import { useCard } from './card.ts';

export function NextSteps() {
  const { at, say } = useCard();
  const startTry = useSession((session) => session.startTry);
  const [, navigate] = useLocation();
  const again = (): void => {
    startTry(at.attempt);
    navigate('/build');
  };
  return (
    <div className="card-next-steps">
      <button type="button" className={at.attempt.confirmedBy === null ? 'btn' : 'btn main'} onClick={again}>
        {say('score-card.again')}
      </button>
      <Link className="btn" href="/board">
        {say('score-card.board')}
      </Link>
      <button type="button" className="btn" onClick={() => window.print()}>
        <Icon name="print" />
        {say('score-card.print')}
      </button>
      <ShareDoor />
      <HelpButton />
      <CardHelp
        items={[
          ['help.again', say('score-card.again')],
          ['help.to-board', say('score-card.board')],
          ['help.print', say('score-card.print')],
          ['help.share', say('score-card.share')],
          ...frameHelp({ say }),
        ]}
      />
    </div>
  );
}
