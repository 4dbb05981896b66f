// A drawing by Observable Plot in the page: as wide as there is room, in letters of the page's own size. To a screen reader it
// is one picture with a text; the labels that Plot puts on groups of marks are no names of anything and fail axe.

import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Sheet } from './sheet.ts';
import { sheetOf } from './sheet.ts';

export type Draw = (sheet: Sheet) => Element;

/** `draw` must be the same function until something else is to be drawn. */
export function PlotDrawing({ alt, draw }: { readonly alt: string; readonly draw: Draw }) {
  const place = useRef<HTMLDivElement>(null);
  const [widthPx, setWidthPx] = useState(0);
  useLayoutEffect(() => {
    const room = place.current;
    if (room === null) return;
    const look = (): void => setWidthPx(Math.floor(room.clientWidth));
    const watch = new ResizeObserver(look);
    watch.observe(room);
    look();
    return () => watch.disconnect();
  }, []);
  useLayoutEffect(() => {
    const room = place.current;
    if (room === null || widthPx === 0) return;
    const drawing = draw(sheetOf(room, widthPx));
    for (const group of drawing.querySelectorAll('[aria-label]')) group.removeAttribute('aria-label');
    drawing.setAttribute('aria-hidden', 'true');
    room.replaceChildren(drawing);
  }, [draw, widthPx]);
  return <div className="graph-drawing" role="img" aria-label={alt} ref={place} />;
}
