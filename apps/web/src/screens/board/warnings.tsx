// What a class should know before it reads the places.

import type { DayWarning } from '@cairnmark/scoring';
import type { Words } from '@cairnmark/words';
import { useCardWords } from '../../app/card-words.tsx';
import type { Scene, Shown } from './scene.ts';
import { challengeName, groupName } from './scene.ts';

export function Warnings({
  record,
  warnings,
  words,
}: Pick<Shown, 'record'> & { readonly warnings: readonly DayWarning[]; readonly words: Words }) {
  const screen = useCardWords();
  if (warnings.length === 0) return null;
  const challengeOf = (id: string) => record.challenges.find((one) => one.id === id);
  const names = {
    challenge: (id: string) => challengeName(record, id),
    criterion: (challenge: string, id: string) =>
      challengeOf(challenge)?.criteria.find((one) => one.id === id)?.name ?? id,
    group: (id: string) => groupName(record, id),
  };
  return (
    <div className="warnbox board-warnings">
      <h2>{screen.say('board.before-reading')}</h2>
      <ul>
        {warnings.map((warning) => (
          <li key={JSON.stringify(warning)}>{words.dayWarning(warning, names)}</li>
        ))}
      </ul>
    </div>
  );
}

/** Judges who met different groups are told beside the challenge itself, too. */
export function JudgeWarnings({ scene: { record, score, challenge, words } }: { readonly scene: Scene }) {
  const own = score.warnings.filter(
    (warning) => warning.code === 'judges-of-different-groups' && warning.challenge === challenge.id,
  );
  return <Warnings record={record} warnings={own} words={words} />;
}
