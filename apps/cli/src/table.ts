// A table as plain text: columns lined up by the width that signs take in a terminal, two blanks between them.

/** Columns that line up at the right, by their position. The last column is not filled up. */
export function tableText(rows: readonly (readonly string[])[], rightColumns: readonly number[]): string {
  const columns = Math.max(0, ...rows.map((row) => row.length));
  const widths = Array.from({ length: columns }, (_, k) => Math.max(...rows.map((row) => widthOf(row[k] ?? ''))));
  const lines = rows.map((row) =>
    row.map((cell, k) => padded(cell, widths[k] ?? 0, rightColumns.includes(k))).join('  '),
  );
  return lines.map((line) => `${line.trimEnd()}\n`).join('');
}

function padded(cell: string, width: number, right: boolean): string {
  const blanks = ' '.repeat(width - widthOf(cell));
  return right ? blanks + cell : cell + blanks;
}

const MARK_ALONE = /^[\p{M}\p{Cf}]$/u;
const WIDE =
  /^[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Emoji_Presentation}\uff01-\uff60]$/u;

/** Places that a text takes: none for a mark on another sign, two for a wide one. */
export function widthOf(text: string): number {
  let width = 0;
  for (const sign of text) width += MARK_ALONE.test(sign) ? 0 : WIDE.test(sign) ? 2 : 1;
  return width;
}
