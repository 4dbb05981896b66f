// Inches as a ruler in inches reads: whole inches and a fraction in halves, quarters, eighths or sixteenths, such as
// "7 3/8". The international inch is 25.4 mm, so a sixteenth is 1.5875 mm, exactly.

import { stepsUp, wholeSteps } from './numbers.ts';

export const SIXTEENTH_MM = 25.4 / 16;

/** The nearest division of the ruler, half away from zero. `stepMm` is a whole number of sixteenths. */
export function inchReading(valueMm: number, stepMm: number): string {
  const steps = wholeSteps(valueMm, stepMm);
  const sixteenths = Math.abs(steps) * Math.round(stepMm / SIXTEENTH_MM);
  return `${steps < 0 ? '−' : ''}${mixedNumber(sixteenths)}`;
}

/** The next sixteenth up: for a tolerance, which is never shown smaller than it is. */
export function inchesUp(valueMm: number): string {
  return mixedNumber(stepsUp(valueMm, SIXTEENTH_MM));
}

function mixedNumber(sixteenths: number): string {
  const whole = Math.floor(sixteenths / 16);
  let [above, under] = [sixteenths % 16, 16];
  while (above > 0 && above % 2 === 0) [above, under] = [above / 2, under / 2];
  if (above === 0) return String(whole);
  return whole === 0 ? `${above}/${under}` : `${whole} ${above}/${under}`;
}
