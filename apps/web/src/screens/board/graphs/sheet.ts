// What a graph is drawn on: its width, the size of its letters, and how wide a text comes out in them. px.

export interface Sheet {
  readonly widthPx: number;
  readonly fontPx: number;
  readonly textWidth: (text: string) => number;
}

export function sheetOf(place: Element, widthPx: number): Sheet {
  const { fontSize, fontFamily } = getComputedStyle(place);
  const fontPx = Number.parseFloat(fontSize);
  const canvas = document.createElement('canvas').getContext('2d');
  if (canvas !== null) canvas.font = `600 ${fontPx}px ${fontFamily}`;
  const textWidth = (text: string): number => canvas?.measureText(text).width ?? text.length * fontPx * WIDE_LETTER;
  return { widthPx, fontPx, textWidth };
}

/** Width of a letter by its height, where the browser measures none: of a wide face. */
const WIDE_LETTER = 0.65;

/** What every drawing has: no margins of its own, letters of the page, and no colours but those of the page. */
export const plain = ({ widthPx, fontPx }: Sheet, heightPx: number) => ({
  width: widthPx,
  height: heightPx,
  margin: 0,
  style: {
    background: 'none',
    color: 'var(--ink-2)',
    fontFamily: 'inherit',
    fontSize: `${fontPx}px`,
    fontVariantNumeric: 'tabular-nums lining-nums',
    overflow: 'visible',
  },
});

/** The first of several texts, from the longest on, that takes at most half of the sheet; the last where none does. */
export const fitting = (texts: readonly string[], { widthPx, textWidth }: Sheet): string =>
  texts.find((text) => textWidth(text) <= widthPx / 2) ?? texts.at(-1) ?? '';
