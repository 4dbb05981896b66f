// The challenge and its rules, each with its sign: kept, broken, or not known yet.

import type { RequirementLine } from '@cairnmark/scoring';
import { useScreenWords } from '../../app/use-words.ts';
import { Icon } from '../../parts/icon.tsx';
import { isUnfinished } from './build-state.ts';
import type { Door } from './doors.tsx';
import { Doors } from './doors.tsx';
import type { Shown } from './shown.ts';

export function RulesBar({ at, words, worked, door, setDoor }: Shown & { readonly setDoor: (door: Door) => void }) {
  const screen = useScreenWords();
  const lines = worked.value?.requirements ?? [];
  return (
    <div className="rules">
      <h1>{at.challenge.name}</h1>
      <ul aria-label={screen.say('build.rules')}>
        {at.challenge.requirements.map((rule) => {
          const line = lines.find(({ requirement }) => requirement === rule.id);
          const sign = signOf(line);
          return (
            <li key={rule.id} className={sign === 'no' ? 'broken' : undefined}>
              {sign !== null && <Icon name={sign} />}
              <span>{line === undefined ? words.inClass.statedRule(rule) : words.inClass.rule(line, rule, 0)}</span>
            </li>
          );
        })}
      </ul>
      <Doors door={door} setDoor={setDoor} />
    </div>
  );
}

function signOf(line: RequirementLine | undefined): 'yes' | 'no' | null {
  if (line === undefined || isUnfinished(line)) return null;
  if (line.verdict === 'kept') return 'yes';
  return line.verdict === 'broken' ? 'no' : null;
}
