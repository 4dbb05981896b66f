// Two groups become one: with which other group, asked in a dialog. Where results would change, the reason stands there.

import type { ClassRecord } from '@cairnmark/engine';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { usePlanWords } from '../../app/plan-words.ts';
import { useWords } from '../../app/use-words.ts';
import { Dialog } from '../../parts/dialog.tsx';
import { againstJoining } from '../../store/joining.ts';
import type { Groups } from './use-groups.ts';

export function JoinGroups({ record, joining: groups }: { readonly record: ClassRecord; readonly joining: Groups }) {
  const { say } = usePlanWords();
  const dialog = useRef<HTMLDialogElement>(null);
  const { listed } = useWords();
  const { joining } = groups;
  const choices =
    joining === null
      ? []
      : record.groups
          .filter(({ id }) => id !== joining.id)
          .map((group) => ({ group, against: againstJoining(record, joining.id, group.id) }));
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
        {choices
          .filter(({ against }) => against === null)
          .map(({ group }) => (
            <button key={group.id} type="button" className="btn" onClick={() => groups.join(group)}>
              {group.name}
            </button>
          ))}
      </div>
      {(['sizes', 'supply'] as const).map((reason) => {
        const others = choices.filter(({ against }) => against === reason).map(({ group }) => group.name);
        if (joining === null || others.length === 0) return null;
        return (
          <p key={reason} className="mut">
            {say(`class.join-not-${reason}`, { group: joining.name, others: listed(others) })}
          </p>
        );
      })}
    </Dialog>
  );
}
