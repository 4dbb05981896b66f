// Moments as files hold them: ISO 8601 with a zone, for instance 2026-03-05T10:20:00+01:00. Reading one is arithmetic
// alone; no clock is involved. Gregorian calendar.

const PATTERN = /^(\d{4})-(\d\d)-(\d\d)T(\d\d):(\d\d)(?::(\d\d(?:\.\d+)?))?(?:Z|([+-])(\d\d):(\d\d))$/;
const DAYS_BEFORE_MONTH = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365];

/** Seconds from the start of the year 0 (UTC) to that moment, or null when the text names no moment. */
export function secondsOf(instant: string): number | null {
  const match = PATTERN.exec(instant);
  if (match === null) return null;
  const part = (group: number): number => Number(match[group] ?? 0);
  const [hours, minutes, seconds, zoneHours, zoneMinutes] = [part(4), part(5), part(6), part(8), part(9)];
  if (hours > 23 || minutes > 59 || seconds >= 60 || zoneHours > 23 || zoneMinutes > 59) return null;
  const days = daysBefore(part(1), part(2), part(3));
  if (days === null) return null;
  const aheadMinutes = (match[7] === '-' ? -1 : 1) * (zoneHours * 60 + zoneMinutes);
  return ((days * 24 + hours) * 60 + minutes - aheadMinutes) * 60 + seconds;
}

/** The same of an instant that has been checked. Throws RangeError when it names no moment. */
export function momentOf(instant: string): number {
  const seconds = secondsOf(instant);
  if (seconds === null) throw new RangeError(`no moment: ${instant}`);
  return seconds;
}

/** Days from the first of January of the year 0 to that date; null when the calendar has no such date. */
function daysBefore(year: number, month: number, day: number): number | null {
  const [before, after] = [DAYS_BEFORE_MONTH[month - 1], DAYS_BEFORE_MONTH[month]];
  if (before === undefined || after === undefined) return null;
  const length = after - before + (month === 2 ? leapDay(year) : 0);
  if (day < 1 || day > length) return null;
  return 365 * year + leapYearsBefore(year) + before + (month > 2 ? leapDay(year) : 0) + day - 1;
}

const isLeap = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
const leapDay = (year: number): number => (isLeap(year) ? 1 : 0);
/** Of the years 0 to `year` - 1. */
const leapYearsBefore = (year: number): number => Math.ceil(year / 4) - Math.ceil(year / 100) + Math.ceil(year / 400);
