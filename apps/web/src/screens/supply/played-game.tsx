// A challenge with a supply game: everything that its parts work with is put together here.

import { stockOf, supplyOf } from '@cairnmark/engine';
import type { SupplyRule } from '@cairnmark/scoring';
import { stockLeft } from '@cairnmark/scoring';
import { useMemo, useState } from 'preact/hooks';
import { usePlanWords } from '../../app/plan-words.ts';
import { useBuildWords } from '../../app/use-build-words.ts';
import { kitScale } from '../../drawing/kit-scale.ts';
import { solidsOf } from '../../drawing/solids-of.ts';
import { useEdit } from '../../store/edit-class.ts';
import { wholeLeft } from '../../store/handing-out.ts';
import { eventsOf } from '../../store/supply-changes.ts';
import { useSession, useSessionStore } from '../../store/use-session.ts';
import type { At } from '../../store/where-at.ts';
import type { Game, Told } from './game.ts';
import { GameContext } from './game.ts';
import { isGameOver } from './game-clock.ts';
import { Sheet } from './sheet.tsx';
import { useRememberedGame } from './use-remembered-game.ts';

export function PlayedGame({ at, rule }: { readonly at: At; readonly rule: SupplyRule }) {
  const { challenge, group, record } = at;
  const { say } = usePlanWords();
  const buildWords = useBuildWords(challenge, record);
  const role = useSession((session) => session.role);
  const events = eventsOf(record, challenge.id);
  const [memory, remember] = useRememberedGame(challenge.id, rule, events);
  const [told, tell] = useTold(group.id);
  const make = useMake(buildWords.words, tell);
  const solids = useMemo(() => solidsOf(challenge, group), [challenge, group]);
  const scale = useMemo(() => kitScale(solids.values()), [solids]);
  const left = wholeLeft(events, challenge);
  const over = isGameOver(rule, memory.clock, left, Date.now());
  const inCharge = role === 'teacher' || role === 'measurer';
  const supply = supplyOf(events, challenge, group);
  if (supply === null) return null;
  const game: Game = {
    ...buildWords,
    at,
    rule,
    say,
    events,
    supply,
    left,
    allLeft: stockLeft(events, stockOf(challenge)),
    solids,
    scale,
    memory,
    remember,
    list: {
      challenge: challenge.id,
      group: group.id,
      round: memory.round,
      carrier: memory.carriers[group.id] ?? null,
    },
    over,
    inCharge,
    closed: over && !inCharge,
    told,
    tell,
    make,
  };
  return (
    <GameContext value={game}>
      <Sheet />
    </GameContext>
  );
}

/** What was told of the list of one group says nothing of another. */
function useTold(group: string): readonly [Told | null, Game['tell']] {
  const [known, setKnown] = useState<{ readonly group: string; readonly told: Told | null }>({ group, told: null });
  return [known.group === group ? known.told : null, (told) => setKnown({ group, told })];
}

/** Changes read the class at the time of the tap, so that quick taps all count. */
function useMake(words: Game['words'], tell: Game['tell']): Game['make'] {
  const store = useSessionStore();
  const edit = useEdit();
  return (place, change, whyNot) => {
    const before = store.getState().record;
    const [fault] = edit(change);
    const done = store.getState().record !== before;
    tell(done ? null : { place, text: fault === undefined ? whyNot : words.issue(fault) });
    return done;
  };
}
