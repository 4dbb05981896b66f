// Where a bar begins and how long it is, in percent of its track. All bars of a table stand on one line, at 0; what is below 0
// goes to the left of it.

export function barSpan(
  value: number | null,
  all: readonly (number | null)[],
): { readonly left: string; readonly width: string } {
  const known = all.flatMap((one) => one ?? []);
  const [least, most] = [Math.min(0, ...known), Math.max(0, ...known)];
  const whole = most - least || 1;
  const at = (one: number): number => (100 * (one - least)) / whole;
  const end = value ?? 0;
  return { left: `${at(Math.min(0, end))}%`, width: `${at(Math.max(0, end)) - at(Math.min(0, end))}%` };
}
