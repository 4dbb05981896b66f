// A part of the rules that is folded away, with a sentence of what is set in it.

import type { ComponentChildren } from 'preact';

export function Fold({
  title,
  set,
  children,
}: {
  readonly title: string;
  /** What is set, in a few words. */
  readonly set: string;
  readonly children: ComponentChildren;
}) {
  return (
    <details className="chal-fold">
      <summary>
        <span className="chal-fold-title">{title}</span> <span className="chal-fold-set">{set}</span>
      </summary>
      <div className="chal-fold-in">{children}</div>
    </details>
  );
}
