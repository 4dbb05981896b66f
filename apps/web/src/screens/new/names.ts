// The words that a new class is filled with, in the language of the device.

import type { ReadyKind } from '@cairnmark/engine';
import { READY_KINDS } from '@cairnmark/engine';
import type { PlanWords, Words } from '@cairnmark/words';
import type { Names } from './made-class.ts';

export const namesIn = ({ say }: Pick<PlanWords, 'say'>, { names }: Pick<Words, 'names'>): Names => ({
  kit: say('class.kit-name'),
  kinds: Object.fromEntries(READY_KINDS.map((kind) => [kind, say(`class.kind-${kind}`)])) as Record<ReadyKind, string>,
  challenges: names.ready,
});
