// Errors and refusals are data: a code, the path of what is wrong, and the numbers that a sentence needs.

/** What is wrong, where, and the figures for the sentence. No wording: sentences live in `words`. */
export interface Issue<Code extends string = string> {
  readonly code: Code;
  /** Keys and indices from the outermost value to the place, for instance ["pieces", 3, "turnRad"]. */
  readonly path: readonly (string | number)[];
  /** Numbers and names that the sentence mentions. Lengths in mm, angles in rad. */
  readonly details: Readonly<Record<string, string | number>>;
}

export type Result<T, I extends Issue = Issue> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly issues: readonly I[] };

export const success = <T>(value: T): { readonly ok: true; readonly value: T } => ({ ok: true, value });
export const failure = <I extends Issue>(
  issues: readonly I[],
): { readonly ok: false; readonly issues: readonly I[] } => ({ ok: false, issues });
