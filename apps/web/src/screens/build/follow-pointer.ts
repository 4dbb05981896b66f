// One pointer, followed all over the page from where it came down until it is let go or taken away.

export interface Followed {
  move(at: readonly [clientX: number, clientY: number]): void;
  /** Let go. True when it had been a drag: then the click that the browser makes of it is none. */
  drop(): boolean;
  /** Taken away: by Escape, by the browser, or because the button came up where no page heard of it. True as above. */
  give(): boolean;
}

/** Answers with a way to stop following. Escape does not reach anything else. */
export function followPointer(pointerId: number, { move, drop, give }: Followed): () => void {
  const ends = new AbortController();
  const { signal } = ends;
  const listen = <Name extends 'pointermove' | 'pointerup' | 'pointercancel'>(
    name: Name,
    then: (event: PointerEvent) => void,
  ): void =>
    window.addEventListener(name, (event) => (event.pointerId === pointerId ? then(event) : undefined), { signal });
  listen('pointermove', (event) => {
    const isUp = event.pointerType === 'mouse' && (event.buttons & 1) === 0;
    if (!isUp) return move([event.clientX, event.clientY]);
    ends.abort();
    give();
  });
  listen('pointerup', () => {
    ends.abort();
    if (drop()) swallowClick();
  });
  listen('pointercancel', () => {
    ends.abort();
    give();
  });
  window.addEventListener(
    'keydown',
    (event) => {
      if (event.key !== 'Escape') return;
      event.stopPropagation();
      ends.abort();
      if (give()) window.addEventListener('pointerup', swallowClick, { once: true });
    },
    { signal, capture: true },
  );
  return () => ends.abort();
}

/** Where a drag ends on what it began on, the browser calls that a click; it comes at once or not at all. */
function swallowClick(): void {
  const ends = new AbortController();
  window.addEventListener('click', (event) => event.stopPropagation(), { capture: true, signal: ends.signal });
  setTimeout(() => ends.abort(), 0);
}
