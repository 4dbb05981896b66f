// Numbers as text. Rounding is half away from zero, as pupils learn it; a decimal point or comma by language.

/** No unit. A quotient this near to a half counts as a half, so that 0.15 / 0.1 rounds up although it is 1.4999... */
const HALF_SLACK = 1e-9;

/** `value` in whole `step`s, half away from zero. The count, not the product. */
export function wholeSteps(value: number, step: number): number {
  const steps = Math.floor(Math.abs(value) / step + 0.5 + HALF_SLACK);
  return value < 0 && steps > 0 ? -steps : steps;
}

/** As `wholeSteps`, but up: a tolerance is never shown smaller than it is. For values of 0 and more. */
export function stepsUp(value: number, step: number): number {
  return Math.max(0, Math.ceil(value / step - HALF_SLACK));
}

/** With exactly so many decimals; the minus sign is a true minus. */
export function fixed(value: number, decimals: number, mark: string): string {
  const steps = wholeSteps(value, 10 ** -decimals);
  const digits = String(Math.abs(steps)).padStart(decimals + 1, '0');
  const whole = digits.slice(0, digits.length - decimals);
  const rest = digits.slice(digits.length - decimals);
  return `${steps < 0 ? '−' : ''}${whole}${decimals > 0 ? mark + rest : ''}`;
}

/** With as many decimals as it needs, from `least` to `most`. */
export function trimmed(value: number, least: number, most: number, mark: string): string {
  let decimals = least;
  while (decimals < most && !isWhole(value * 10 ** decimals)) decimals += 1;
  return fixed(value, decimals, mark);
}

/** No unit. What is left of a whole number after arithmetic in doubles, at the sizes shown here. */
const WHOLE_SLACK = 1e-6;

export const isWhole = (value: number): boolean => Math.abs(value - Math.round(value)) <= WHOLE_SLACK;
