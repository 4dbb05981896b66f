// Plain JSON as steps meet it: what is not where it is looked for is left alone.

import type { Content } from '../steps.ts';

export const isObject = (value: unknown): value is Content =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Each group of keys of a list, brought up. */
export const eachOf = (list: unknown, up: (content: Content) => Content): unknown =>
  Array.isArray(list) ? list.map((item: unknown) => (isObject(item) ? up(item) : item)) : list;

/** Each value of a group of keys, by name. */
export const everyValue = (values: unknown, up: (value: unknown) => unknown): unknown =>
  isObject(values) ? Object.fromEntries(Object.entries(values).map(([key, value]) => [key, up(value)])) : values;
