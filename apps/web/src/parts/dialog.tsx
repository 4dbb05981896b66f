// A modal dialog with a title and a way to close it. Escape closes it too.

import type { ComponentChildren, RefObject } from 'preact';
import { useId } from 'preact/hooks';
import { useScreenWords } from '../app/use-words.ts';

export function Dialog({
  dialog,
  title,
  children,
}: {
  readonly dialog: RefObject<HTMLDialogElement>;
  readonly title: string;
  readonly children: ComponentChildren;
}) {
  const words = useScreenWords();
  const id = useId();
  return (
    <dialog ref={dialog} aria-labelledby={id} className="dialog">
      <div className="dialog-head">
        <h2 id={id}>{title}</h2>
        <button type="button" className="btn" onClick={() => dialog.current?.close()}>
          {words.say('frame.close')}
        </button>
      </div>
      {children}
    </dialog>
  );
}
