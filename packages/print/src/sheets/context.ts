// What every sheet works with: the data, and what all of them make of it.

import { unitOf } from '@cairnmark/engine';
import type { Solid } from '@cairnmark/geometry';
import { makeSolid, TILT_BANDS } from '@cairnmark/geometry';
import type { ClassWords, PlanWords, PrintWords, ScreenWords } from '@cairnmark/words';
import { classReader } from '@cairnmark/words';
import type { SheetData } from './data.ts';

export interface SheetContext extends SheetData {
  readonly inClass: ClassWords;
  /** A text of the sheets, of the teacher's screens, of all screens. */
  readonly say: PrintWords['say'];
  readonly sayPlan: PlanWords['say'];
  readonly sayScreen: ScreenWords['say'];
  /** Of the kit, in its order; a kind with sizes that fit no solid has none. */
  readonly solids: ReadonlyMap<string, Solid>;
}

export function contextOf(data: SheetData): SheetContext {
  const { challenge, record, ruler, words } = data;
  return {
    ...data,
    inClass: words.words.inClass(classReader(challenge, record.groups, { ruler, bands: TILT_BANDS, unitOf })),
    say: words.printed.say,
    sayPlan: words.plan.say,
    sayScreen: words.screen.say,
    solids: new Map(
      challenge.kit.kinds.flatMap(({ id, solid }) => {
        const made = makeSolid(solid);
        return made.ok ? [[id, made.value] as const] : [];
      }),
    ),
  };
}
