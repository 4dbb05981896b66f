// Cutting a sheet along some of its folds, and the ways to choose the folds.

import type { Joint, Sheet } from '../unfold/unfold.ts';

/** The sheets that are left when a sheet is cut along those of the joints that it has; faces stay where they lie. */
export function cutAt(sheet: Sheet, joints: readonly Joint[]): readonly Sheet[] {
  const kept = sheet.joints.filter(([parent, child]) => !joints.some(([p, c]) => p === parent && c === child));
  const top = new Map<number, number>();
  for (const { face } of sheet.faces) top.set(face, face);
  // A parent stands before its children, so its own top is known.
  for (const [parent, child] of kept) top.set(child, top.get(parent) ?? parent);
  return [...new Set(top.values())].map((root) => ({
    faces: sheet.faces.filter(({ face }) => top.get(face) === root),
    joints: kept.filter(([parent]) => top.get(parent) === root),
    lids: sheet.lids,
  }));
}

/** All ways to choose `count` of a list; null when there are more than `most`. */
export function choices<T>(list: readonly T[], count: number, most: number): readonly (readonly T[])[] | null {
  let ways = 1;
  for (let k = 0; k < count; k += 1) ways = (ways * (list.length - k)) / (k + 1);
  return ways > most ? null : choose(list, count);
}

function choose<T>(list: readonly T[], count: number): readonly (readonly T[])[] {
  if (count === 0) return [[]];
  return list.flatMap((first, k) => choose(list.slice(k + 1), count - 1).map((rest) => [first, ...rest]));
}
