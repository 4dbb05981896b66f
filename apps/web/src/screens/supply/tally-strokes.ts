// A count as tally strokes: groups of four upright ones with the fifth across.

/** Strokes of each group of a tally: 12 is 5, 5 and 2. */
export function gatesOf(count: number): readonly number[] {
  const whole = Math.floor(count / STROKES_A_GATE);
  const rest = count % STROKES_A_GATE;
  return [...Array.from({ length: whole }, () => STROKES_A_GATE), ...(rest > 0 ? [rest] : [])];
}

/** The path of one group in a box of `GATE_WIDE` by `GATE_HIGH`. */
export function gatePath(strokes: number): string {
  const upright = Array.from({ length: Math.min(strokes, UPRIGHT) }, (_, k) => `M${4 + k * APART} 4v${GATE_HIGH - 8}`);
  return [...upright, ...(strokes > UPRIGHT ? [`M1 ${GATE_HIGH - 7}L${GATE_WIDE - 1} 7`] : [])].join('');
}

/** px. */
export const GATE_WIDE = 35;
export const GATE_HIGH = 30;

const STROKES_A_GATE = 5;
const UPRIGHT = STROKES_A_GATE - 1;
/** px from one upright stroke to the next. */
const APART = (GATE_WIDE - 8) / (UPRIGHT - 1);
