// A measure that is one measure divided by another, with both shown in its working. Unit as each one states.

import type { Unit } from '../kernel/formula.ts';
import { over, step, sym } from '../kernel/formula.ts';
import type { MeasureContext } from './context.ts';
import type { Finding, MeasureDefinition } from './measure.ts';
import type { MeasureId } from './types.ts';

/** A measure in a formula. */
interface Named {
  readonly symbol: string;
  readonly of: MeasureDefinition;
}

/** The measure `symbol` = `above` / `under`. Not measured where either is not, or where `under` is 0. */
export function ratioMeasure(id: MeasureId, unit: Unit, symbol: string, above: Named, under: Named): MeasureDefinition {
  const formula = over(sym(above.symbol), sym(under.symbol));
  const measure = (context: MeasureContext): Finding => {
    const [dividend, divisor] = [above.of.measure(context), under.of.measure(context)];
    if (!dividend.found) return dividend;
    if (!divisor.found) return divisor;
    if (divisor.value === 0) return { found: false, reason: 'divisor-zero' };
    const inputs = {
      [above.symbol]: { value: dividend.value, unit: above.of.unit },
      [under.symbol]: { value: divisor.value, unit: under.of.unit },
    };
    const line = step(symbol, formula, inputs, unit);
    return { found: true, value: line.result.value, working: { method: 'ratio', steps: [line], parts: [] } };
  };
  return { id, unit, measure };
}
