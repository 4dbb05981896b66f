// A file or photo that gave no try, and why.

import { usePlanWords } from '../../app/plan-words.ts';
import { useScreenWords, useWords } from '../../app/use-words.ts';
import { FAULTS_TOLD_MOST } from '../../parts/faults-told.ts';
import type { Read } from './read-offered.ts';

export function NotRead({ file, read }: { readonly file: string; readonly read: Exclude<Read, { kind: 'offered' }> }) {
  const { say } = usePlanWords();
  const screen = useScreenWords();
  const words = useWords();
  const sentences = (): readonly string[] => {
    switch (read.kind) {
      case 'refused':
        return read.issues.slice(0, FAULTS_TOLD_MOST).map(words.issue);
      case 'file-gone':
        return [screen.say('start.file-gone')];
      case 'photo-not-opened':
      case 'no-code':
        return [say(`share.${read.kind}`)];
    }
  };
  return (
    <div className="badbox" role="alert">
      <p>
        <b>{say('share.not-read', { file })}</b>
      </p>
      {sentences().map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </div>
  );
}
