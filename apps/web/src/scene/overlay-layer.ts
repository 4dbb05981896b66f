// The layer over the canvas: marks as SVG, texts as HTML of fixed size with a line to what they name.

import type { Vec2 } from '@cairnmark/geometry';
import { linePath } from '../drawing/paths.ts';
import type { Box } from './label-layout.ts';
import { layOutLabels, leaderFrom } from './label-layout.ts';
import type { Mark } from './marks.ts';

/** A text with a line to its anchor. */
export interface Named {
  readonly text: string;
  readonly anchor: Vec2;
  readonly look: string;
  /** True for a text that is left out where it has no good place. */
  readonly isSpare: boolean;
}

export class OverlayLayer {
  readonly #marks = document.createElementNS(SVG, 'svg');
  readonly #texts = document.createElement('div');
  readonly #height = document.createElement('span');

  constructor(host: HTMLElement) {
    this.#marks.setAttribute('class', 'scene-marks');
    this.#marks.setAttribute('aria-hidden', 'true');
    this.#texts.className = 'scene-labels';
    this.#height.className = 'scene-height';
    host.prepend(this.#marks, this.#height, this.#texts);
  }

  /** Writes the height, and tells how wide it is, px; it is seen when it has a place. */
  measureHeight(text: string | null): number {
    if (this.#height.textContent !== (text ?? '')) this.#height.textContent = text ?? '';
    return text === null ? 0 : this.#height.offsetWidth;
  }

  placeHeight(at: Vec2 | null): Box | null {
    this.#height.hidden = at === null || this.#height.textContent === '';
    if (at === null || this.#height.hidden) return null;
    const { offsetWidth: width, offsetHeight: height } = this.#height;
    moveTo(this.#height, [at[0], at[1] - height / 2]);
    return { left: at[0], top: at[1] - height / 2, width, height };
  }

  /** Draws the marks, and each text where it covers nothing that matters. */
  draw(marks: readonly Mark[], named: readonly Named[], avoid: readonly Box[], frame: Box): void {
    const spans = named.map(({ text, look }) => {
      const span = document.createElement('span');
      span.className = `scene-label ${look}`;
      span.textContent = text;
      return span;
    });
    this.#texts.replaceChildren(...spans);
    const sizes = named.map(({ anchor, isSpare }, k) => {
      const { width, height } = sizeOfText(spans[k]);
      return { anchor, width, height, isSpare };
    });
    const leaders: Mark[] = [];
    layOutLabels(sizes, avoid, frame).forEach((box, k) => {
      const [span, one] = [spans[k], named[k]];
      if (span === undefined || one === undefined) return;
      span.hidden = box === null;
      if (box === null) return;
      moveTo(span, [box.left, box.top]);
      leaders.push({ kind: 'path', look: 'leader', d: linePath([leaderFrom(box, one.anchor), one.anchor], 1) });
    });
    this.#marks.replaceChildren(...[...leaders, ...marks].map(elementOf));
  }

  dispose(): void {
    for (const part of [this.#marks, this.#texts, this.#height]) part.remove();
  }
}

const SVG = 'http://www.w3.org/2000/svg';

/** Of the words alone: a text that wraps stands in a box that may be wider. */
function sizeOfText(span: HTMLElement | undefined): { readonly width: number; readonly height: number } {
  if (span === undefined) return { width: 0, height: 0 };
  const words = document.createRange();
  words.selectNodeContents(span);
  return words.getBoundingClientRect();
}

function moveTo(element: HTMLElement, [x, y]: Vec2): void {
  element.style.transform = `translate(${Math.round(x)}px, ${Math.round(y)}px)`;
}

function elementOf(mark: Mark): SVGElement {
  const element = document.createElementNS(SVG, mark.kind);
  for (const [name, value] of Object.entries(attributesOf(mark))) element.setAttribute(name, String(value));
  if (mark.kind === 'text') element.textContent = mark.text;
  return element;
}

function attributesOf(mark: Mark): Readonly<Record<string, string | number>> {
  switch (mark.kind) {
    case 'path':
      return { class: mark.look, d: mark.d };
    case 'circle':
      return { class: mark.look, cx: mark.at[0], cy: mark.at[1], r: mark.radiusPx };
    case 'text':
      return { class: mark.look, x: mark.at[0], y: mark.at[1] };
  }
}
