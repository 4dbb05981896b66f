// One way to begin: what it is, and the button that does it.

import type { ComponentChildren } from 'preact';

export function Way({
  title,
  what,
  children,
}: {
  readonly title: string;
  readonly what: string;
  readonly children: ComponentChildren;
}) {
  return (
    <div className="way">
      <div>
        <h3>{title}</h3>
        <p>{what}</p>
      </div>
      {children}
    </div>
  );
}
