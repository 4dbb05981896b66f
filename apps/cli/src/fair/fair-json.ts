// What the points lab found, as data. Shares of a proof are whole numbers of any size: beyond what JSON holds they are texts.

import type { TerminalLab } from './lab.ts';

export function fairJson(lab: TerminalLab, found: Readonly<Record<string, unknown>>): string {
  const { record, challenge, counting, kit, data, today } = lab;
  const all = {
    class: record.name,
    invented: record.invented,
    challenge: challenge.id,
    counting,
    rows: kit.rows.map((row, j) => ({ ...row, today: today[j], counts: data.rows.includes(row.id) })),
    kinds: kit.data.kinds,
    ...found,
  };
  return JSON.stringify(all, (_, value: unknown) => (typeof value === 'bigint' ? plain(value) : value), 2);
}

const plain = (value: bigint): number | string =>
  value <= BigInt(Number.MAX_SAFE_INTEGER) ? Number(value) : String(value);
