// Letters on a net in parts: at every fold that was parted, the same letter on the tab and where the tab comes to lie. Both
// are on the printed side: the tab is laid on the other part with its blank side down, and both letters can be seen until then.

import type { Vec2 } from '@cairnmark/geometry';
import { add2, scale2, sub2 } from '@cairnmark/geometry';
import type { NetPart, NetTab } from '@cairnmark/nets';
import type { Writing } from '../page/page.ts';
import { BLACK } from '../page/page.ts';
import type { Fitted } from './fitted.ts';

/** Of one part of a net, before it is turned by `turnRad`, by which the letters are turned back. */
export function lettersOn({ faces, tabs }: NetPart, { net, parted }: Fitted, turnRad: number): readonly Writing[] {
  const all = net.parts.flatMap((part) => part.tabs);
  const own = new Set(faces.map(({ face }) => face));
  return parted.flatMap((pair, k) => {
    const text = letterOf(k);
    return all
      .filter(({ host, mate }) => pair.includes(host) && pair.includes(mate))
      .flatMap((tab) => [
        ...(tabs.includes(tab) ? [letter(text, cornersOf(tab), tab, turnRad)] : []),
        ...(own.has(tab.mate) ? [letter(text, tab.landing, tab, turnRad)] : []),
      ]);
  });
}

/** A, B, ... Z, A2, B2, ... */
function letterOf(k: number): string {
  const round = Math.floor(k / ALPHABET.length);
  return `${ALPHABET[k % ALPHABET.length]}${round === 0 ? '' : round + 1}`;
}

const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

const cornersOf = ({ outline }: NetTab): readonly Vec2[] => [outline.start, ...outline.steps.map(({ to }) => to)];

/** In the middle of a tab, or of the place where it is glued. */
function letter(text: string, ring: readonly Vec2[], { depthMm }: NetTab, turnRad: number): Writing {
  const sizeMm = Math.min(MOST_MM, DEPTH_SHARE * depthMm);
  const middle = scale2(ring.reduce(add2, [0, 0]), 1 / ring.length);
  const up: Vec2 = [Math.sin(turnRad), Math.cos(turnRad)];
  const at = sub2(middle, scale2(up, CAPITAL_SHARE * sizeMm));
  return { kind: 'writing', text, at, align: 'middle', font: 'bold', sizeMm, turnRad: -turnRad, grey: BLACK };
}

/** mm of font size, and its share of the depth of the tab. */
const MOST_MM = 4.4;
const DEPTH_SHARE = 0.55;

/** No unit (of the font size). Half the height of a capital. */
const CAPITAL_SHARE = 0.359;
