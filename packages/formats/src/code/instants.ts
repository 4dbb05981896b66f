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
  /** On the wall, since the turn of 2000. */
  readonly seconds: number;
  /** null: not written. */
  readonly thousandths: number | null;
  /** 0: Z; otherwise quarters of an hour ahead of UTC, from EARLIEST on. */
  readonly zone: number;
}

/** Up to 2136. */
const SECONDS_BITS = 32;
const THOUSANDTHS_BITS = 10;
const ZONE_BITS = 8;

const START_MS = Date.UTC(2000, 0, 1);
const QUARTERS_AN_HOUR = 4;
/** A day behind UTC, and one: 0 is taken. */
const EARLIEST = 24 * QUARTERS_AN_HOUR + 1;

function momentOf(text: string): Moment | null {
  const found = /^(\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d)(?:\.(\d{3}))?(Z|[+-]\d\d:\d\d)$/.exec(text);
  if (found === null) return null;
  const [, wall = '', thousandths, zone = 'Z'] = found;
  const seconds = (Date.parse(`${wall}Z`) - START_MS) / 1000;
  const moment = { seconds, thousandths: thousandths === undefined ? null : Number(thousandths), zone: zoneOf(zone) };
  // Before 2000, quarters that are none, a leap second: whatever would not come back as it stands.
  return seconds >= 0 && seconds < 2 ** SECONDS_BITS && textOf(moment) === text ? moment : null;
}

function textOf({ seconds, thousandths, zone }: Moment): string | null {
  const wall = new Date(START_MS + seconds * 1000).toISOString().slice(0, 'yyyy-mm-ddThh:mm:ss'.length);
  const behind = zoneText(zone);
  if (behind === null || (thousandths ?? 0) > 999) return null;
  return `${wall}${thousandths === null ? '' : `.${String(thousandths).padStart(3, '0')}`}${behind}`;
}

function zoneOf(text: string): number {
  if (text === 'Z') return 0;
  const quarters = Number(text.slice(1, 3)) * QUARTERS_AN_HOUR + Math.floor(Number(text.slice(4)) / 15);
  return EARLIEST + (text.startsWith('-') ? -quarters : quarters);
}

function zoneText(zone: number): string | null {
  if (zone === 0) return 'Z';
  const quarters = zone - EARLIEST;
  const two = (part: number): string => String(part).padStart(2, '0');
  const hours = Math.floor(Math.abs(quarters) / QUARTERS_AN_HOUR);
  if (hours >= 24) return null;
  return `${quarters < 0 ? '-' : '+'}${two(hours)}:${two((Math.abs(quarters) % QUARTERS_AN_HOUR) * 15)}`;
}
