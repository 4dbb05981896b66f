// What a teacher chooses on the Print screen. Nothing of it belongs to the class.

import type { Challenge, ClassRecord } from '@cairnmark/engine';
import type { NetOrder, PaperSize, Print } from '@cairnmark/print';
import { usualPupils, usualTabDepthMm } from '@cairnmark/print';
import type { PaperId } from '../../workers/print-questions.ts';

export type PartId = PaperId | 'nets';

export interface PrintSettings {
  readonly chosen: ReadonlySet<PartId>;
  readonly paper: PaperSize;
  readonly print: Print;
  /** In the whole class. */
  readonly pupils: number;
  /** As many copies of a sheet as the class needs, or one of each, to be copied. */
  readonly copies: 'needed' | 'one';
  /** A set of the kit for each group, or every piece that the class has. */
  readonly pieces: 'sets' | 'stock';
  readonly sets: number;
  /** Each set on sheets of its own; all nets on the fewest sheets; or one solid a sheet, to copy. */
  readonly arrange: 'sets' | NetOrder['arrange'];
  readonly tabDepthMm: number;
  readonly large: NetOrder['large'];
}

export const SETS_MOST = 30;
export const PUPILS_MOST = 200;

/** What most teachers want of it: nets, a table to measure in, the rules. */
export function firstSettings({ groups }: ClassRecord, challenge: Challenge): PrintSettings {
  const young = challenge.gradePreset === 'grades-2-3';
  return {
    chosen: new Set<PartId>(['nets', young ? 'measure-young' : 'measure-older', 'rules']),
    paper: challenge.ruler.endsWith('inch') ? 'letter' : 'a4',
    print: 'usual',
    pupils: usualPupils(groups.length),
    copies: 'needed',
    pieces: 'sets',
    sets: Math.min(SETS_MOST, Math.max(1, groups.length)),
    arrange: 'sets',
    tabDepthMm: usualTabDepthMm(challenge.gradePreset),
    large: 'tell',
  };
}

/** How the nets lie: every piece of the class is in no set. */
export const arrangementOf = ({ arrange, pieces }: PrintSettings): PrintSettings['arrange'] =>
  arrange === 'sets' && pieces === 'stock' ? 'mixed' : arrange;

/** The same with a part more, or without it. */
export function toggled(chosen: PrintSettings['chosen'], part: PartId): ReadonlySet<PartId> {
  const next = new Set(chosen);
  if (!next.delete(part)) next.add(part);
  return next;
}
