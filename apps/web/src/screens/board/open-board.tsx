// The board of an open class: what is at the head, what is told of its state, and the ranking or the progress below.

import type { ClassRecord } from '@cairnmark/engine';
import { useRef } from 'preact/hooks';
import { useCardWords } from '../../app/card-words.tsx';
import { HelpArea } from '../../parts/asked-help.tsx';
import { WHOLE_DAY } from '../../store/board-state.ts';
import { useSession } from '../../store/use-session.ts';
import { useClassScore } from '../../workers/use-engine.ts';
import { ChallengeBoard } from './challenge-board.tsx';
import { DayBoard } from './day-board.tsx';
import { FreezeButton, FreezeNote } from './freeze.tsx';
import { Head } from './head.tsx';
import type { Shown } from './scene.ts';
import { useFrozen } from './use-frozen.ts';
import { Working } from './working.tsx';

export function OpenBoard({ record: now }: { readonly record: ClassRecord }) {
  const words = useCardWords();
  const section = useRef<HTMLElement>(null);
  const freezing = useFrozen(now);
  const worked = useClassScore(freezing.record);
  const shown = useShown(freezing.record ?? now);
  const whole = { record: freezing.record, score: worked.value };
  return (
    <HelpArea>
      <section className="board" ref={section} aria-label={words.say('board.title')} aria-busy={worked.working}>
        <Head
          record={freezing.record ?? now}
          shown={shown}
          working={worked.working && worked.value !== null}
          section={section}
        />
        {freezing.record !== null && <Working worked={worked} />}
        {isWhole(whole) ? (
          <BoardOf whole={whole} shown={shown} freezing={freezing} />
        ) : (
          freezing.frozen !== null && (
            <div className="board-tools">
              <FreezeNote frozen={freezing.frozen} />
              <FreezeButton freezing={freezing} />
            </div>
          )
        )}
      </section>
    </HelpArea>
  );
}

function BoardOf({
  whole,
  shown,
  freezing,
}: {
  readonly whole: Shown;
  readonly shown: string;
  readonly freezing: ReturnType<typeof useFrozen>;
}) {
  const challenge = whole.record.challenges.find(({ id }) => id === shown);
  if (challenge === undefined) return <DayBoard {...whole} freezing={freezing} />;
  return <ChallengeBoard key={challenge.id} {...whole} challenge={challenge} freezing={freezing} />;
}

/** What is chosen here, else the challenge at work; own progress is told challenge by challenge. */
function useShown({ challenges }: ClassRecord): string {
  const { shown, view } = useSession((session) => session.board);
  const atWork = useSession((session) => session.place?.challenge);
  if (shown === WHOLE_DAY && view === 'ranking') return WHOLE_DAY;
  const known = [shown, atWork].find((id) => challenges.some((one) => one.id === id));
  return known ?? challenges[0]?.id ?? WHOLE_DAY;
}

const isWhole = (whole: { readonly [K in keyof Shown]: Shown[K] | null }): whole is Shown =>
  whole.record !== null && whole.score !== null;
