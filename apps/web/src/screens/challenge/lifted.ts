// A challenge that was taken out, and the class as it was before: enough to put it back.

import type { ClassRecord } from '@cairnmark/engine';

export interface Gone {
  readonly id: string;
  readonly name: string;
  readonly before: ClassRecord;
}
