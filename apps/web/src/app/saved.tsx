// Whether everything is kept on this device, said in a word and told when it changes for the worse.

import { useSession } from '../store/use-session.ts';
import { useScreenWords } from './use-words.ts';

const TEXT = { kept: 'saved.saved', saving: 'saved.saving', full: 'saved.full', failed: 'saved.failed' } as const;

export function Saved() {
  const words = useScreenWords();
  const saved = useSession((session) => session.saved);
  const bad = saved === 'full' || saved === 'failed';
  return (
    <span className={bad ? 'saved off' : 'saved'} role={bad ? 'alert' : undefined} data-saved={saved}>
      <i />
      <span>{words.say(TEXT[saved])}</span>
    </span>
  );
}
