// Moments, sign by sign as they stand in the record: the time on the wall in seconds and the zone, six bytes in all; any
// other way in which a file may write one goes letter by letter.

import type { Part } from './part.ts';
import { letters } from './texts.ts';

export const instant: Part<string> = {
  write: (text, out) => {
    const moment = momentOf(text);
    out.put(moment === null ? 1 : 0, 1);
    if (moment === null) return letters.write(text, out);
    out.put(moment.seconds, SECONDS_BITS);
    out.put(moment.thousandths === null ? 0 : 1, 1);
    if (moment.thousandths !== null) out.put(moment.thousandths, THOUSANDTHS_BITS);
    out.put(moment.zone, ZONE_BITS);
  },
  read: (from) => {
    if (from.take(1) === 1) return letters.read(from);
    const seconds = from.take(SECONDS_BITS);
    const thousandths = from.take(1) === 1 ? from.take(THOUSANDTHS_BITS) : null;
    const text = textOf({ seconds, thousandths, zone: from.take(ZONE_BITS) });
    if (text === null) from.fault();
    return text ?? '';
  },
};

interface Moment {
  /** On the wall, since the turn of 2000, in a calendar whose months all have 31 days. */
  readonly seconds: number;
  /** null: not written. */
  readonly thousandths: number | null;
  /** 0: Z; otherwise quarters of an hour ahead of UTC, from EARLIEST on. */
  readonly zone: number;
}

/** Up to 2133. */
const SECONDS_BITS = 32;
const THOUSANDTHS_BITS = 10;
const ZONE_BITS = 8;

const FIRST_YEAR = 2000;
const QUARTERS_AN_HOUR = 4;
/** A day behind UTC, and one: 0 is taken. */
const EARLIEST = 24 * QUARTERS_AN_HOUR + 1;

function momentOf(text: string): Moment | null {
  const found = /^(\d{4})-(\d\d)-(\d\d)T(\d\d):(\d\d):(\d\d)(?:\.(\d{3}))?(Z|[+-]\d\d:\d\d)$/.exec(text);
  if (found === null) return null;
  const [year = 0, month = 0, day = 0, hours = 0, minutes = 0, rest = 0] = found.slice(1, 7).map(Number);
  const days = ((year - FIRST_YEAR) * 12 + month - 1) * 31 + day - 1;
  const seconds = ((days * 24 + hours) * 60 + minutes) * 60 + rest;
  const thousandths = found[7] === undefined ? null : Number(found[7]);
  const moment = { seconds, thousandths, zone: zoneOf(found[8] ?? '') };
  // Before 2000, a part of a quarter, a leap second: whatever would not come back as it stands.
  return seconds >= 0 && seconds < 2 ** SECONDS_BITS && textOf(moment) === text ? moment : null;
}

function textOf({ seconds, thousandths, zone }: Moment): string | null {
  const behind = zoneText(zone);
  if (behind === null || (thousandths ?? 0) > 999) return null;
  const days = Math.floor(seconds / 86_400);
  const months = Math.floor(days / 31);
  const date = [FIRST_YEAR + Math.floor(months / 12), two((months % 12) + 1), two((days % 31) + 1)].join('-');
  const wall = [Math.floor(seconds / 3600) % 24, Math.floor(seconds / 60) % 60, seconds % 60].map(two).join(':');
  return `${date}T${wall}${thousandths === null ? '' : `.${String(thousandths).padStart(3, '0')}`}${behind}`;
}

const two = (part: number): string => String(part).padStart(2, '0');

function zoneOf(text: string): number {
  if (text === 'Z') return 0;
  const quarters = Number(text.slice(1, 3)) * QUARTERS_AN_HOUR + Math.floor(Number(text.slice(4)) / 15);
  return EARLIEST + (text.startsWith('-') ? -quarters : quarters);
}

function zoneText(zone: number): string | null {
  if (zone === 0) return 'Z';
  const quarters = zone - EARLIEST;
  const hours = Math.floor(Math.abs(quarters) / QUARTERS_AN_HOUR);
  if (hours >= 24) return null;
  return `${quarters < 0 ? '-' : '+'}${two(hours)}:${two((Math.abs(quarters) % QUARTERS_AN_HOUR) * 15)}`;
}
