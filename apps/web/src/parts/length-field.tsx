// A field for a length: cm, mm or inches as they come, stored in mm.

import { LENGTH_MM_MOST } from '@cairnmark/engine';
import type { NumberFieldProps } from './number-field.tsx';
import { NumberField } from './number-field.tsx';

type LengthFieldProps = Omit<NumberFieldProps, 'value' | 'unit' | 'least' | 'most' | 'whole'> & {
  /** null: nothing is entered. */
  readonly valueMm: number | null;
  readonly leastMm?: number;
  readonly mostMm?: number;
};

export const LengthField = ({ valueMm, leastMm = 0, mostMm = LENGTH_MM_MOST, ...others }: LengthFieldProps) => (
  <NumberField {...others} value={valueMm} unit="mm" least={leastMm} most={mostMm} />
);
