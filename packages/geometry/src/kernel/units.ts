// Lengths people read and write. Inside everything is mm; a class reads one ruler, and numbers are shown as it reads.

export const MM_PER_CM = 10;
/** Exact by definition (international inch). */
export const MM_PER_INCH = 25.4;

export type RulerId =
  | 'mm'
  | 'half-cm'
  | 'cm'
  | 'inch'
  | 'half-inch'
  | 'quarter-inch'
  | 'eighth-inch'
  | 'sixteenth-inch';

export interface Ruler {
  readonly id: RulerId;
  /** The unit that numbers are shown in. */
  readonly unit: 'mm' | 'cm' | 'in';
  /** One division, mm. */
  readonly stepMm: number;
}

export const RULERS: readonly Ruler[] = [
  { id: 'mm', unit: 'mm', stepMm: 1 },
  { id: 'half-cm', unit: 'cm', stepMm: 5 },
  { id: 'cm', unit: 'cm', stepMm: 10 },
  { id: 'inch', unit: 'in', stepMm: MM_PER_INCH },
  { id: 'half-inch', unit: 'in', stepMm: MM_PER_INCH / 2 },
  { id: 'quarter-inch', unit: 'in', stepMm: MM_PER_INCH / 4 },
  { id: 'eighth-inch', unit: 'in', stepMm: MM_PER_INCH / 8 },
  { id: 'sixteenth-inch', unit: 'in', stepMm: MM_PER_INCH / 16 },
];

/** The ruler of that name. Throws RangeError for a name outside the list. */
export function rulerOf(id: RulerId): Ruler {
  const ruler = RULERS.find((candidate) => candidate.id === id);
  if (ruler === undefined) throw new RangeError(`no ruler ${id}`);
  return ruler;
}
