// Blocks laid out as a sheet. Everything that does not fit is told at once, as data; nothing is ever cut off.

import type { Result } from '@cairnmark/geometry';
import { failure, success } from '@cairnmark/geometry';
import type { Sheet } from '../frame/frame.ts';
import { usableArea } from '../frame/frame.ts';
import type { PrintIssue } from '../issue.ts';
import type { Paper } from '../page/paper.ts';
import { shifted } from '../page/shapes.ts';
import type { Block } from './blocks.ts';
import { pour } from './pour.ts';
import type { Room } from './room.ts';
import { setBlocks } from './set-blocks.ts';
import type { Print } from './sizes.ts';
import { SIZES } from './sizes.ts';
import type { Slab } from './slab.ts';
import { slab, stacked } from './slab.ts';

export interface Layout {
  readonly paper: Paper;
  readonly print: Print;
  /** More are refused. In large print a sheet takes more: allow for them there. */
  readonly mostPages: number;
  /** What stands in small letters above further pages, counted from 1; not where a page begins with a title of its own. */
  readonly follow?: (page: number) => string;
}

/**
 * A sheet of these blocks. Refused with 'character-unprintable', 'text-too-wide', 'text-too-high', 'part-too-wide' and
 * 'part-too-high' at the place of the block, such as ["blocks", 2, "rows", 3, "cells", 1], and with 'pages-too-many'.
 */
export function layOut(name: string, blocks: readonly Block[], layout: Layout): Result<Sheet, PrintIssue> {
  const { paper, print, mostPages, follow } = layout;
  const area = usableArea(paper);
  const issues: PrintIssue[] = [];
  const refuse = (issue: PrintIssue): void => {
    issues.push(issue);
  };
  const room = { widthMm: area.widthMm, sizes: SIZES[print], refuse };
  const pages = pour(setBlocks(blocks, { ...room, path: ['blocks'] }), area, refuse, (first, page) => {
    if (follow === undefined || page === 0 || isTitle(blocks[Number(first.path[1])])) return null;
    return aboveOf(follow(page + 1), { ...room, path: ['follow'] });
  });
  if (pages.length > mostPages) {
    refuse({ code: 'pages-too-many', path: [], details: { count: pages.length, most: mostPages } });
  }
  if (issues.length > 0) return failure(issues);
  return success({ name, paper, pages: pages.map((marks) => marks.map((mark) => shifted(mark, area.cornerMm))) });
}

const isTitle = (block: Block | undefined): boolean => block?.kind === 'heading' && block.size === 'title';

function aboveOf(text: string, room: Omit<Room, 'inside'>): Slab {
  const { heightMm, marks } = stacked(setBlocks([{ kind: 'paragraph', text, size: 'small', font: 'bold' }], room));
  return slab(room.path, heightMm + BELOW_MM, marks, 0);
}

/** mm. Between the small title and what the page begins with. */
const BELOW_MM = 2;
