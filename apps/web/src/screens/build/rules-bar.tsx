// The challenge and its rules, each with its sign: kept, broken, or not known yet.

import { unitOf } from '@cairnmark/engine';
import type { Requirement, RequirementLine } from '@cairnmark/scoring';
import type { ScreenWords } from '@cairnmark/words';
import { useScreenWords } from '../../app/use-words.ts';
import { HelpList } from '../../parts/asked-help.tsx';
import { Icon } from '../../parts/icon.tsx';
import { isUnfinished } from './build-state.ts';
import type { Door } from './doors.tsx';
import { Doors } from './doors.tsx';
import { Help } from './help.tsx';
import type { Shown } from './shown.ts';

interface RulesBarProps extends Shown {
  readonly setDoor: (door: Door) => void;
  readonly setHelp: (help: boolean) => void;
}

export function RulesBar({ at, words, worked, door, setDoor, help, setHelp }: RulesBarProps) {
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
              <span>{ruleText(rule, line, words, screen)}</span>
            </li>
          );
        })}
      </ul>
      <button type="button" className="btn bare" aria-pressed={help} onClick={() => setHelp(!help)}>
        {screen.say('frame.help')}
      </button>
      <Doors door={door} setDoor={setDoor} />
      {help && <Help text={`help.door-${door}`} />}
      {door !== 'numbers' && door !== 'trace' && (
        <HelpList
          on={help}
          items={[
            ['help.undo', screen.say('build.undo')],
            ['help.redo', screen.say('build.redo')],
            ['help.clear', screen.say('build.clear')],
            ['help.look', screen.say('build.view')],
            ['help.keys', screen.say('build.keys')],
            ...(door === 'lay' ? [['help.line-up', screen.say('line-up')] as const] : []),
          ]}
        />
      )}
    </div>
  );
}

/** "Exactly 5 pieces, 6 now"; what is kept needs no figure. */
function ruleText(
  rule: Requirement,
  line: RequirementLine | undefined,
  { words, inClass }: Shown['words'],
  screen: ScreenWords,
): string {
  const title = words.capital(inClass.ruleTitle(rule));
  if (line === undefined || line.measure === null || line.value === null || line.verdict === 'kept') return title;
  const isCount = unitOf(line.measure) === 'count';
  const value = isCount ? words.number(line.value) : inClass.amount(line.measure, line.value, 0);
  return screen.say('build.rule-now', { rule: title, value });
}

function signOf(line: RequirementLine | undefined): 'yes' | 'no' | null {
  if (line === undefined || isUnfinished(line)) return null;
  if (line.verdict === 'kept') return 'yes';
  return line.verdict === 'broken' ? 'no' : null;
}
