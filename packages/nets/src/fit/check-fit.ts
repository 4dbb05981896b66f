// Whether a net fits a page, and if not, what would.

import type { Result } from '@cairnmark/geometry';
import { failure, success } from '@cairnmark/geometry';
import type { Net, NetIssue } from '../net.ts';
import type { Placing } from './fits.ts';
import { fits } from './fits.ts';
import type { Frame } from './frame.ts';
import { largestThatFits } from './largest.ts';
import { splitNet } from './split.ts';

/**
 * A placing for each part, each on a page of its own. Else `too-large`, with the details `solid`, `paper`; `size`, the name
 * of the solid's first size, and `largestMm`, how long that may be in this shape; `scale`, by which every length would have
 * to shrink; `parts`, the number of parts in which the net fits as it is, 0 when no split helps.
 */
export function checkFit(net: Net, frame: Frame): Result<readonly Placing[], NetIssue> {
  const placings = net.parts.flatMap((part): Placing[] => {
    const placing = fits(part, frame);
    return placing === null ? [] : [placing];
  });
  if (placings.length === net.parts.length) return success(placings);
  const { id: solid, sizes } = net.solid;
  const { tabDepthMm, base } = net;
  const largest = largestThatFits({ solid, sizes }, frame, { tabDepthMm, base });
  const split = splitNet(net, frame);
  const { size, largestMm, scale } = largest.ok ? largest.value : { size: '', largestMm: 0, scale: 0 };
  const parts = split.ok ? split.value.parts.length : 0;
  return failure([
    { code: 'too-large', path: [], details: { solid, paper: frame.paper, size, largestMm, scale, parts } },
  ]);
}
