// What is folded away under the table. Its fields are made when it is opened: a kit has many of them.

import type { ComponentChildren, RefObject } from 'preact';
import { useState } from 'preact/hooks';
import { HelpTexts } from '../../parts/asked-help.tsx';

export function Fold({
  title,
  help,
  fold,
  children,
}: {
  readonly title: string;
  readonly help: string;
  readonly fold?: RefObject<HTMLDetailsElement>;
  readonly children: () => ComponentChildren;
}) {
  const [open, setOpen] = useState(false);
  return (
    <>
      <HelpTexts items={[[help, title]]} />
      <details ref={fold ?? null} className="kit-fold" onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
        <summary>{title}</summary>
        {open && children()}
      </details>
    </>
  );
}
