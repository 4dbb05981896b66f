// A list with a limit. The schema library reads a list to its end, however long it is and however much is wrong in it: a
// file made for that purpose would stall the program for minutes. This list looks at its length first, and reads no
// further once it has met more faults than are told. In JSON Schema it is an array with `maxItems`.

import * as z from 'zod/mini';
import { ZodMiniArray } from 'zod/mini';
import { ISSUES_TOLD_MOST } from '../limits.ts';

/** A list of at most `most` of what `item` describes. */
export function listOf<T extends z.core.$ZodType>(item: T, most: number): z.ZodMiniArray<T> {
  return new List<T>({ type: 'array', element: item, checks: [z.maxLength(most)], most });
}

interface Definition<T extends z.core.$ZodType> extends z.core.$ZodArrayDef<T> {
  readonly most: number;
}

/** An array of the schema library that reads its items in its own way. */
const List = z.core.$constructor('List', (list: z.ZodMiniArray, definition: Definition<z.core.$ZodType>) => {
  ZodMiniArray.init(list, definition);
  const readAll = list._zod.parse;
  list._zod.parse = (payload, context) => {
    const items = payload.value;
    if (!Array.isArray(items)) return readAll(payload, context);
    return items.length > definition.most ? payload : readItems(items, payload, definition.element, context);
  };
}) as new <T extends z.core.$ZodType>(
  definition: Definition<T>,
) => z.ZodMiniArray<T>;

function readItems<P extends z.core.ParsePayload>(
  items: readonly unknown[],
  payload: P,
  element: z.core.$ZodType,
  context: z.core.ParseContextInternal,
): P {
  const read: unknown[] = [];
  payload.value = read;
  for (const [index, value] of items.entries()) {
    const item = element._zod.run({ value, issues: [] }, context);
    if (item instanceof Promise) throw new RangeError('no schema of ours waits for anything');
    payload.issues.push(...z.core.util.prefixIssues(index, item.issues));
    if (payload.issues.length > ISSUES_TOLD_MOST) return payload;
    read.push(item.value);
  }
  return payload;
}
