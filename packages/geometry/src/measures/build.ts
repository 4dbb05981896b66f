// A build as it was measured: the layout, and the sizes of each kind of piece as they were read off a ruler.
// From it come the solids and the context of the measures.

import type { Result } from '../kernel/result.ts';
import { failure, success } from '../kernel/result.ts';
import { makeSolid } from '../solids/catalogue.ts';
import type { SizeIssue, Solid, SolidSpec } from '../solids/types.ts';
import type { Layout, SolidsByKind, StackIssue } from '../stack/types.ts';
import type { MeasureContext } from './context.ts';
import { contextOf } from './context.ts';
import type { MeasureOptions } from './types.ts';

/** Kind id to the solid with its sizes, as the group measured it. */
export type PieceKinds = ReadonlyMap<string, SolidSpec>;

export interface Build {
  readonly layout: Layout;
  readonly kinds: PieceKinds;
}

export type MeasureIssue = StackIssue | SizeIssue;

/** The context of a build, or what is wrong with the sizes of the kinds it uses, or with its layout. */
export function contextOfBuild(build: Build, options: MeasureOptions): Result<MeasureContext, MeasureIssue> {
  const solids = solidsOf(build);
  if (!solids.ok) return solids;
  const unknown = unknownKinds(build);
  return unknown.length > 0 ? failure(unknown) : contextOf(build.layout, solids.value, options);
}

/** Ids of the kinds that the build uses, each once, in order of first use. */
export function kindsUsed({ layout }: Build): readonly string[] {
  return [...new Set(layout.kind === 'laid-out' ? layout.pieces.map((piece) => piece.kind) : layout.pieces)];
}

/** The kinds used and known. The sizes of a kind that is not used may be as wrong as they like. */
function solidsOf(build: Build): Result<SolidsByKind, SizeIssue> {
  const solids = new Map<string, Solid>();
  const issues: SizeIssue[] = [];
  for (const kind of kindsUsed(build)) {
    const spec = build.kinds.get(kind);
    if (spec === undefined) continue;
    const made = makeSolid(spec);
    if (made.ok) solids.set(kind, made.value);
    else issues.push(...made.issues.map((issue) => ({ ...issue, path: ['kinds', kind, ...issue.path] })));
  }
  return issues.length > 0 ? failure(issues) : success(solids);
}

/** Entries of a list of pieces that name no kind. Of pieces laid out, the stack tells it with its other issues. */
function unknownKinds({ layout, kinds }: Build): readonly StackIssue[] {
  if (layout.kind === 'laid-out') return [];
  return layout.pieces.flatMap((kind, index): readonly StackIssue[] =>
    kinds.has(kind) ? [] : [{ code: 'kind-unknown', path: ['pieces', index], details: { kind } }],
  );
}
