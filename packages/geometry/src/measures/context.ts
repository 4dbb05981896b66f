// What the measures of one build look at, worked out once: the tally, the stack, the footprint, the base.
// Whatever the layout does not show stands here with the reason, so that no measure takes it for 0. Lengths mm.

import type { Outline } from '../kernel/outline.ts';
import type { Result } from '../kernel/result.ts';
import { success } from '../kernel/result.ts';
import { CONTACT_MM } from '../kernel/tolerance.ts';
import type { HullFacts, UnionFacts } from '../outline/index.ts';
import { hullOf, unionFacts } from '../outline/index.ts';
import { buildStack } from '../stack/build-stack.ts';
import type { Layout, SolidsByKind, Stack, StackIssue } from '../stack/types.ts';
import type { Base } from './base.ts';
import { baseOfStack, baseOfTraced } from './base.ts';
import type { Build } from './build.ts';
import type { Shown } from './measure.ts';
import { notShown, shown } from './measure.ts';
import type { KindTally } from './tally.ts';
import { tallyOf } from './tally.ts';
import type { MeasureOptions } from './types.ts';

export interface MeasureContext {
  readonly options: MeasureOptions;
  readonly tally: Shown<readonly KindTally[]>;
  readonly stack: Shown<Stack>;
  /** The height a person wrote down with a traced outline. */
  readonly heightRead: Shown<number>;
  readonly footprint: Shown<UnionFacts>;
  readonly hull: Shown<HullFacts>;
  readonly base: Shown<Base>;
}

/** The context of a build. Refused as the stack refuses it; every kind of a list of pieces must be among the solids. */
export function contextOf({ layout, solids }: Build, options: MeasureOptions): Result<MeasureContext, StackIssue> {
  switch (layout.kind) {
    case 'laid-out':
      return laidOutContext(layout, solids, options);
    case 'traced':
      return success(tracedContext(layout, solids, options));
    case 'numbers-only':
      return success({
        options,
        tally: listed(layout.pieces, solids),
        ...NOTHING_DRAWN,
        heightRead: NO_LAYOUT,
      });
  }
}

const NO_LAYOUT = notShown('no-layout');
const NOTHING_DRAWN = { stack: NO_LAYOUT, footprint: NO_LAYOUT, hull: NO_LAYOUT, base: NO_LAYOUT };

const NO_PIECES = notShown('no-pieces-listed');
const EMPTY_TABLE = {
  tally: NO_PIECES,
  stack: NO_PIECES,
  heightRead: NO_PIECES,
  footprint: NO_PIECES,
  hull: NO_PIECES,
  base: NO_PIECES,
};

/** mm. Measures are of the pieces as they lie: a gap that carries is still a gap. */
const NO_SLACK_MM = 0;

function laidOutContext(
  layout: Layout & { kind: 'laid-out' },
  solids: SolidsByKind,
  options: MeasureOptions,
): Result<MeasureContext, StackIssue> {
  const built = buildStack(layout.pieces, solids, NO_SLACK_MM);
  if (!built.ok) return built;
  const stack = built.value;
  if (stack.pieces.length === 0) return success({ options, ...EMPTY_TABLE });
  const outlines = stack.pieces.map((piece) => piece.outline);
  const [footprint, hull] = [footprintOf(outlines, options), hullOf(outlines)];
  return success({
    options,
    tally: listed(
      layout.pieces.map((piece) => piece.kind),
      solids,
    ),
    stack: shown(stack),
    heightRead: notShown('no-height-read'),
    footprint: shown(footprint),
    hull: shown(hull),
    base: shown(baseOfStack(stack, footprint, hull, options)),
  });
}

function tracedContext(
  layout: Layout & { kind: 'traced' },
  solids: SolidsByKind,
  options: MeasureOptions,
): MeasureContext {
  const tally = listed(layout.pieces, solids);
  const heightRead = layout.heightMm === undefined ? notShown('no-height-read') : shown(layout.heightMm);
  if (layout.outlines.length === 0) return { options, tally, ...NOTHING_DRAWN, heightRead };
  const outlines = layout.outlines.map((traced) => traced.outline);
  return {
    options,
    tally,
    stack: notShown('traced-outline-only'),
    heightRead,
    footprint: shown(footprintOf(outlines, options)),
    hull: shown(hullOf(outlines)),
    base: baseOfTraced(layout.outlines, options),
  };
}

function listed(pieces: readonly string[], solids: SolidsByKind): Shown<readonly KindTally[]> {
  return pieces.length === 0 ? notShown('no-pieces-listed') : shown(tallyOf(pieces, solids));
}

function footprintOf(outlines: readonly Outline[], options: MeasureOptions): UnionFacts {
  return unionFacts(outlines, { contactMm: CONTACT_MM, gapAllowanceMm: options.gapAllowanceMm });
}
