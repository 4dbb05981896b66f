// A build as it was measured: the layout, and the solids that follow from the sizes as they were read off a ruler.

import type { Result } from '../kernel/result.ts';
import { failure, success } from '../kernel/result.ts';
import { makeSolid } from '../solids/catalogue.ts';
import type { SizeIssue, Solid, SolidSpec } from '../solids/types.ts';
import type { Layout, SolidsByKind, StackIssue } from '../stack/types.ts';

/** Kind id to the solid with its sizes, as the group measured it. */
export type PieceKinds = ReadonlyMap<string, SolidSpec>;

export interface Build {
  readonly layout: Layout;
  /** The kinds that the layout uses. */
  readonly solids: SolidsByKind;
}

export type MeasureIssue = StackIssue | SizeIssue;

/** The build, or all that is wrong with the sizes of the kinds it uses, its list of pieces, its traced outlines. */
export function buildOf(layout: Layout, kinds: PieceKinds): Result<Build, MeasureIssue> {
  const solids = new Map<string, Solid>();
  const issues: MeasureIssue[] = [...unknownKinds(layout, kinds), ...endlessOutlines(layout)];
  for (const kind of kindsUsed(layout)) {
    const spec = kinds.get(kind);
    if (spec === undefined) continue;
    const made = makeSolid(spec);
    if (made.ok) solids.set(kind, made.value);
    else issues.push(...made.issues.map((issue) => ({ ...issue, path: ['kinds', kind, ...issue.path] })));
  }
  return issues.length > 0 ? failure(issues) : success({ layout, solids });
}

/** Ids of the kinds that the layout uses, each once, in order of first use. */
export function kindsUsed(layout: Layout): readonly string[] {
  return [...new Set(layout.kind === 'laid-out' ? layout.pieces.map((piece) => piece.kind) : layout.pieces)];
}

/** Entries of a list of pieces that name no kind. Of pieces laid out, the stack tells it with its other issues. */
function unknownKinds(layout: Layout, kinds: PieceKinds): readonly StackIssue[] {
  if (layout.kind === 'laid-out') return [];
  return layout.pieces.flatMap((kind, index): readonly StackIssue[] =>
    kinds.has(kind) ? [] : [{ code: 'kind-unknown', path: ['pieces', index], details: { kind } }],
  );
}

/** Traced outlines with a coordinate that is no finite number. Of pieces laid out, the stack tells it. */
function endlessOutlines(layout: Layout): readonly StackIssue[] {
  if (layout.kind !== 'traced') return [];
  return layout.outlines.flatMap(({ outline }, index): readonly StackIssue[] => {
    const numbers = outline.kind === 'disc' ? [...outline.centre, outline.radiusMm] : outline.points.flat();
    const endless = numbers.find((value) => !Number.isFinite(value));
    if (endless === undefined) return [];
    return [{ code: 'position-not-finite', path: ['outlines', index], details: { value: String(endless) } }];
  });
}
