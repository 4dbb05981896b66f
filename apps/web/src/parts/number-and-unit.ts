// Number and unit of a text apart, since the unit is written smaller: "45.3" and "cm", "7 3/8" and "in", "10.5" and "°".

export function numberAndUnit(text: string): { readonly number: string; readonly unit: string } {
  const found = /^([−–-]?\d[\d.,/ ]*?)(°|(?:\s+(?:[^\d.,/ ].*))?)$/u.exec(text);
  const [, number = text, unit = ''] = found ?? [];
  return { number, unit: unit.trim() };
}
