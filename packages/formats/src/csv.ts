// Comma separated values (RFC 4180) for spreadsheets. A text that a spreadsheet would take for a formula gets an
// apostrophe in front; numbers have a decimal point; nothing at all stands for a value that there is not.

export type Cell = string | number | null;

/** A mark of the byte order comes first: without it spreadsheets take the text for an older code than UTF-8. */
const BYTE_ORDER = '\ufeff';

export function csvText(rows: readonly (readonly Cell[])[]): string {
  return BYTE_ORDER + rows.map((row) => `${row.map(cellText).join(',')}\r\n`).join('');
}

/** Digits after the point: a thousandth of a mm is below what any ruler reads. */
const DECIMALS = 3;

function cellText(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return String(Number(cell.toFixed(DECIMALS)));
  const harmless = FORMULA.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}

/** The wide signs are read like the narrow ones. */
const FORMULA = /^\s*[=+\-@\t\r＝＋－＠]/u;
