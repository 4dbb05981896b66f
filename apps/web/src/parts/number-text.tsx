// A number with its unit: the unit lighter and smaller.

import { numberAndUnit } from './number-and-unit.ts';

export function NumberText({ text }: { readonly text: string }) {
  const { number, unit } = numberAndUnit(text);
  return (
    <>
      {number}
      {unit !== '' && <small>{unit === '°' ? unit : ` ${unit}`}</small>}
    </>
  );
}
