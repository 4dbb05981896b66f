// Two groups become one: with which other group, asked in a dialog.

import type { ClassRecord } from '@cairnmark/engine';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { usePlanWords } from '../../app/plan-words.ts';
import { Dialog } from '../../parts/dialog.tsx';
import type { Groups } from './use-groups.ts';

export function JoinGroups({ record, joining: groups }: { readonly record: ClassRecord; readonly joining: Groups }) {
  const { say } = usePlanWords();
  const dialog = useRef<HTMLDialogElement>(null);
  const { joining } = groups;
  useLayoutEffect(() => {
    const box = dialog.current;
    if (joining === null) box?.close();
    else if (box?.open === false) box.showModal();
    const closed = (): void => groups.startJoining(null);
    box?.addEventListener('close', closed);
    return () => box?.removeEventListener('close', closed);
  }, [joining?.id]);
  return (
    <Dialog dialog={dialog} title={say('class.join-title', { group: joining?.name ?? '' })}>
      <p>{say('class.join-what', { group: joining?.name ?? '' })}</p>
      <div className="join-choices">
        {record.groups
          .filter(({ id }) => id !== joining?.id)
          .map((group) => (
            <button key={group.id} type="button" className="btn" onClick={() => groups.join(group)}>
              {group.name}
            </button>
          ))}
      </div>
    </Dialog>
  );
}
