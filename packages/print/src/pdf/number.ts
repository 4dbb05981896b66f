// Numbers as PDF and SVG write them: no exponent, no minus in front of a zero.

/** To four decimals, which for mm is a tenth of a thousandth. Throws RangeError when it is not finite. */
export function numberText(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`a mark at ${value}`);
  return String(Number(value.toFixed(DECIMALS)) + 0);
}

const DECIMALS = 4;
