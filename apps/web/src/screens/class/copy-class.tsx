// A copy of the class without results: the same groups, challenges and kit, to be played again. The class stays as it is.

import type { ClassRecord } from '@cairnmark/engine';
import { NAME_CHARACTERS_MOST } from '@cairnmark/formats';
import { useState } from 'preact/hooks';
import { usePlanWords } from '../../app/plan-words.ts';
import { Icon } from '../../parts/icon.tsx';
import { freshId } from '../../store/fresh-id.ts';
import { withoutResults } from '../../store/group-changes.ts';
import { useSession } from '../../store/use-session.ts';

export function CopyClass({ record }: { readonly record: ClassRecord }) {
  const { say } = usePlanWords();
  const begin = useSession((session) => session.begin);
  const saved = useSession((session) => session.saved);
  const [told, setTold] = useState('');
  const copy = (): void => {
    // What this device does not keep would be gone with the copy in its place.
    if (saved !== 'kept') {
      setTold(say('class.copy-not-kept'));
      return;
    }
    const name = say('class.copy-name', { name: record.name }).slice(0, NAME_CHARACTERS_MOST).trim();
    begin(freshId(), { ...withoutResults(record, name), invented: record.invented });
    setTold(say('class.copied', { name }));
  };
  return (
    <>
      <button type="button" className="btn" onClick={copy}>
        <Icon name="copy" />
        {say('class.copy')}
      </button>
      <p role="status" className={told === '' ? 'vh' : 'note'}>
        {told}
      </p>
    </>
  );
}
