// A number that somebody typed, read without guessing: comma or point is the decimal, inches may be fractions ("7 3/8"),
// a unit may follow. What could mean two things is asked back, and anything else is not read at all.

/** A unit that may be written behind a number. One of it is `over` / `under` of the engine's unit, both whole where they can be. */
export interface WrittenUnit {
  /** As shown behind the field. */
  readonly name: string;
  /** Other ways to write it, in small letters. */
  readonly alsoWritten: readonly string[];
  readonly over: number;
  readonly under: number;
  /** Rulers of inches have fractions: halves to sixty-fourths. */
  readonly fractions: boolean;
}

/** Values in the engine's unit. `either`: "1,250" is 1.25 where the comma is the decimal, and 1250 where it parts the thousands. */
export type TypedNumber =
  | { readonly kind: 'read'; readonly value: number }
  | { readonly kind: 'either'; readonly decimal: number; readonly thousands: number }
  | { readonly kind: 'empty' }
  | { readonly kind: 'unreadable' };

/** Reads a number in the first of the units, unless another one of them is written behind it. */
export function readNumber(text: string, units: readonly WrittenUnit[]): TypedNumber {
  const plain = plainText(text);
  if (plain === '') return { kind: 'empty' };
  const [, sign = '', digits = '', suffix = ''] = PARTS.exec(plain) ?? [];
  const unit = suffix === '' ? units[0] : units.find((one) => isWritten(one, suffix));
  if (unit === undefined) return UNREADABLE;
  const inUnit = ([above, below]: Ratio): number => signed(sign, (above * unit.over) / (below * unit.under));
  const fraction = unit.fractions ? fractionOf(digits) : null;
  if (fraction !== null) return { kind: 'read', value: inUnit(fraction) };
  const decimal = decimalOf(digits);
  if (decimal === null) return UNREADABLE;
  if (!THOUSANDS.test(digits)) return { kind: 'read', value: inUnit(decimal) };
  return { kind: 'either', decimal: inUnit(decimal), thousands: inUnit([decimal[0], 1]) };
}

/** A number as two whole ones, so that what is stored is the double nearest to what was written. */
type Ratio = readonly [above: number, below: number];

const UNREADABLE = { kind: 'unreadable' } as const;
/** A sign, a number (with what belongs to a mixed one), a unit. */
const PARTS = /^([+-]?)\s*([\d.,/]+(?:[\s-]+\d+\/\d+)?)\s*([^\d\s.,/+-].*)?$/;
const DECIMAL = /^(\d*)[.,]?(\d*)$/;
const FRACTION = /^(?:(\d+)[\s-]+)?(\d+)\/(\d+)$/;
/** One to three figures that do not begin with nought, and exactly three behind the mark. */
const THOUSANDS = /^[1-9]\d{0,2}[.,]\d{3}$/;
/** Divisions of a ruler in inches: a slip such as 3/88 is none of them. */
const DIVISIONS: readonly number[] = [2, 4, 8, 16, 32, 64];
/** Further figures are a slip, and would no longer be whole numbers to a computer. */
const FIGURES_MOST = 12;

/** Signs that tablets put in of their own accord are taken as what was meant. */
const plainText = (text: string): string =>
  text
    .replace(/[¼½¾⅛⅜⅝⅞]/g, (sign) => ` ${sign.normalize('NFKD')}`)
    .replace(/⁄/g, '/')
    .replace(/[−–]/g, '-')
    .replace(/″|”|“|''|’’/g, '"')
    .replace(/²/g, '2')
    .replace(/³/g, '3')
    .trim()
    .toLowerCase();

const isWritten = ({ name, alsoWritten }: WrittenUnit, suffix: string): boolean =>
  suffix === plainText(name) || alsoWritten.includes(suffix);

const signed = (sign: string, value: number): number => (sign === '-' && value !== 0 ? -value : value);

/** A proper fraction, alone or behind a whole number: 73/8 is more likely a space forgotten than nine and an eighth. */
function fractionOf(digits: string): Ratio | null {
  const [found, whole = '0', above, below] = FRACTION.exec(digits) ?? [];
  if (found === undefined || found.length > FIGURES_MOST) return null;
  const [parts, division] = [Number(above), Number(below)];
  if (!DIVISIONS.includes(division) || parts === 0 || parts >= division) return null;
  return [Number(whole) * division + parts, division];
}

function decimalOf(digits: string): Ratio | null {
  const [found, whole = '', behind = ''] = DECIMAL.exec(digits) ?? [];
  const figures = whole + behind;
  if (found === undefined || figures === '' || figures.length > FIGURES_MOST) return null;
  return [Number(figures), 10 ** behind.length];
}
