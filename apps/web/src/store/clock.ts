// The time as records write it: ISO 8601 with the zone of this device.

export function nowWithZone(): string {
  const now = new Date();
  const minutes = -now.getTimezoneOffset();
  const local = new Date(now.getTime() + minutes * 60_000).toISOString().slice(0, 19);
  const two = (value: number): string => String(Math.trunc(Math.abs(value))).padStart(2, '0');
  return `${local}${minutes < 0 ? '-' : '+'}${two(minutes / 60)}:${two(minutes % 60)}`;
}
