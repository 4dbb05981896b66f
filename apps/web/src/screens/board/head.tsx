// The head of the board: what is shown, the bars to choose something else, and the full screen.

import type { ClassRecord } from '@cairnmark/engine';
import type { CardWords } from '@cairnmark/words';
import type { RefObject } from 'preact';
import { CardHelp } from '../../app/card-help.tsx';
import { useCardWords } from '../../app/card-words.tsx';
import { frameHelp } from '../../app/frame-help.ts';
import { HelpButton } from '../../parts/asked-help.tsx';
import { Choice } from '../../parts/choice.tsx';
import { WHOLE_DAY } from '../../store/board-state.ts';
import { useSession } from '../../store/use-session.ts';
import { FullScreen } from './full-screen.tsx';

export function Head({
  record,
  shown,
  working,
  section,
}: {
  readonly record: ClassRecord;
  readonly shown: string;
  /** What is shown is being worked out anew. */
  readonly working: boolean;
  readonly section: RefObject<HTMLElement>;
}) {
  const words = useCardWords();
  const view = useSession((session) => session.board.view);
  const showOnBoard = useSession((session) => session.showOnBoard);
  const day = { id: WHOLE_DAY, text: words.say('board.day') };
  const challenges = record.challenges.map(({ id, name }) => ({ id, text: name }));
  const options = view === 'ranking' && challenges.length > 1 ? [...challenges, day] : challenges;
  const title = options.find(({ id }) => id === shown)?.text ?? words.say('board.title');
  return (
    <div className="board-head">
      <div>
        <h1>{title}</h1>
        <p className="board-invented">
          {record.invented && words.say('frame.invented')}{' '}
          <span role="status">{working && words.say('frame.loading')}</span>
        </p>
      </div>
      <div className="board-choices">
        <Choice
          label={words.say('board.which')}
          hideLabel
          options={options}
          chosen={shown}
          choose={(id) => showOnBoard({ shown: id })}
        />
        <Choice
          label={words.say('board.view')}
          hideLabel
          options={(['ranking', 'graphs', 'own'] as const).map((id) => ({ id, text: words.say(`board.${id}`) }))}
          chosen={view}
          choose={(id) => showOnBoard({ view: id })}
        />
        <FullScreen section={section} />
        <HelpButton />
      </div>
      <CardHelp items={boardHelp(words)} />
    </div>
  );
}

const boardHelp = (words: CardWords) =>
  [
    ['help.which', words.say('board.which')],
    ['help.view', words.say('board.view')],
    ['help.full-screen', words.say('board.full-screen')],
    ['help.freeze', words.say('board.freeze')],
    ['help.hide-places', words.say('board.hide-places')],
    [
      'help.one-by-one',
      words.say('board.one-by-one'),
      words.say('board.next-place'),
      words.say('board.last-place'),
      words.say('board.all-places'),
    ],
    ['help.why-place', words.say('board.group')],
    ['help.page', words.say('board.page-after')],
    ['help.numbers', words.say('board.numbers')],
    ['help.csv', words.say('board.csv')],
    ...frameHelp(words),
  ] as const;
