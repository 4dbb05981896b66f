// Answers held against trying everything, as a table: how many of each kind, how many of them wrong.

interface Compared {
  readonly answer: string;
  readonly wrong: readonly string[];
  readonly branches: number;
}

export function answersText(all: readonly Compared[]): string {
  const answers = [...new Set(all.map(({ answer }) => answer))].sort();
  const line = (label: string, some: readonly Compared[]): readonly string[] => [
    label,
    `${some.length}`,
    `${some.filter(({ wrong }) => wrong.length > 0).length}`,
    `${Math.max(...some.map(({ branches }) => branches))}`,
  ];
  const rows = [
    ['answer', 'times', 'wrong', 'branches at most'],
    ...answers.map((answer) =>
      line(
        answer,
        all.filter((one) => one.answer === answer),
      ),
    ),
    line('all', all),
  ];
  const widths = rows[0]!.map((_, k) => Math.max(...rows.map((row) => row[k]!.length)));
  return rows
    .map((row) => row.map((cell, k) => (k === 0 ? cell.padEnd(widths[k]!) : cell.padStart(widths[k]! + 2))).join(''))
    .join('\n');
}
