// Pages of nets: what was ordered, unfolded, packed and drawn. Ink ends inside the solids, so that every fold is a valley
// fold and the outside stays clean. Sizes stand on the teacher's key alone: pupils measure before they fold.

import type { Result } from '@cairnmark/geometry';
import { failure, success } from '@cairnmark/geometry';
import type { PrintWords } from '@cairnmark/words';
import { framedPages, usableArea } from '../frame/frame.ts';
import type { PrintIssue } from '../issue.ts';
import type { Progress } from '../packing/types.ts';
import type { Page } from '../page/page.ts';
import type { Paper } from '../page/paper.ts';
import { unprintableIn } from '../page/unprintable.ts';
import type { NetPage } from './arrange.ts';
import { masters, mixed } from './arrange.ts';
import { pageMarks } from './draw.ts';
import { fitNets } from './fitted.ts';
import type { NetOrder, NetSheets } from './order.ts';
import { pageName, plainName } from './page-names.ts';

/**
 * Nets on pages as ordered; kinds of which no net can be made on this paper are left out, and told. Null where `progress`
 * stopped the work: it is told of every part that is placed, and before that asked for every kind. Refused with
 * 'character-unprintable' at ["kinds", 2, "name"]. Throws RangeError for a count that is no whole number from 0 on, and for
 * a depth of tabs that is no positive length.
 */
export function netSheets(
  order: NetOrder,
  words: PrintWords,
  progress: Progress,
): Result<NetSheets | null, PrintIssue> {
  const issues = order.kinds.flatMap(({ name }, k) => unprintableIn(name, ['kinds', k, 'name']));
  if (issues.length > 0) return failure(issues);
  const ordered = netsIn(order);
  const nets = fitNets(order, words, () => progress(0, ordered));
  if (nets === null) return success(null);
  const paper: Paper = { size: order.paper, orientation: 'portrait' };
  const arranged = ARRANGE[order.arrange](nets.fitted, usableArea(paper), progress);
  if (!arranged.ok || arranged.value === null) return arranged.ok ? success(null) : arranged;
  const { pages, counts } = arranged.value;
  const framed = withFeet(pages, paper, order, words);
  if (!framed.ok) return framed;
  return success({ pages: framed.value, copies: pages.map(({ copies }) => copies), leftOut: nets.leftOut, counts });
}

const ARRANGE = { mixed, masters };

function netsIn({ kinds }: NetOrder): number {
  const wrong = kinds.find(({ count }) => !(Number.isInteger(count) && count >= 0));
  if (wrong !== undefined) throw new RangeError(`${wrong.count} nets of ${wrong.id}`);
  return kinds.reduce((sum, { count }) => sum + count, 0);
}

/** A name that is too long for a foot stands on its nets alone; the other pages keep theirs. */
function withFeet(
  pages: readonly NetPage[],
  paper: Paper,
  { invented = false }: NetOrder,
  words: PrintWords,
): Result<readonly Page[], PrintIssue> {
  const { widthMm } = usableArea(paper);
  const names = pages.map((page) => pageName(page, invented, words));
  const fits = (name: string): boolean =>
    framedPages(
      paper,
      names.map(() => ({ name, marks: [] })),
      words,
    ).ok;
  const fitting = new Set([...new Set(names)].filter(fits));
  const named = pages.map((page, k) => {
    const name = names[k] ?? '';
    return {
      name: fitting.has(name) ? name : plainName(invented, words),
      marks: pageMarks(page, widthMm, words),
    };
  });
  return framedPages(paper, named, words);
}
