// What one piece of each solid has, and what it earns under today's points, as a table with what it says.

import type { Earned } from '@cairnmark/scoring';
import { whoEarns } from '@cairnmark/scoring';
import { labKindName } from '@cairnmark/words';
import { tableText } from '../table.ts';
import type { TerminalLab } from './lab.ts';

export function earnsText(lab: TerminalLab): readonly string[] {
  const { challenge, counting, kit, data, today, words, inClass, say } = lab;
  const { perPiece, per100Cm2 } = whoEarns(kit.data, today);
  const used = kit.rows.flatMap(({ id }, j) => (today[j] !== 0 || data.rows.includes(id) ? [{ id, j }] : []));
  const head = [
    say('lab.solid'),
    ...used.map(({ id }) => inClass.label(id)),
    say('fair.today'),
    ...(per100Cm2 === null ? [] : [say('fair.for-paper')]),
  ];
  const rows = kit.data.kinds.map(({ id, measures }, k) => [
    labKindName(id, lab),
    ...used.map(({ j }) => words.number(measures[j] ?? 0)),
    words.number(perPiece.values[k] ?? 0),
    ...(per100Cm2 === null ? [] : [oneDecimal(per100Cm2.values[k] ?? null, lab)]),
  ]);
  const told = [
    ...(today.every((rate) => rate === 0) ? [] : spreadTexts(perPiece, per100Cm2, lab)),
    ...(isAbout(lab) ? [say('lab.about')] : []),
  ];
  const rates = challenge.points.map(inClass.statedRow).join('; ');
  return [
    say('fair.title', { challenge: challenge.name }),
    rates === '' ? say('fair.no-points') : say('fair.points', { rows: rates }),
    say('fair.counting', { counting: words.names.counting[counting] }),
    '',
    ...tableText([head, ...rows], head.map((_, k) => k).slice(1))
      .trimEnd()
      .split('\n'),
    ...(told.length > 0 ? ['', ...told] : []),
  ];
}

/** A row that rounds, or stops at a limit, gives a whole build something else than the sum of its pieces. */
const isAbout = ({ challenge, kit }: TerminalLab): boolean =>
  challenge.points.some(
    ({ measure, rounding, capPoints, floorPoints }) =>
      kit.rows.some(
        ({ id, per }) => id === measure && (per !== 1 || capPoints !== undefined || floorPoints !== undefined),
      ) &&
      (rounding !== 'none' || capPoints !== undefined || floorPoints !== undefined),
  );

function spreadTexts(perPiece: Earned, per100Cm2: Earned | null, lab: TerminalLab): readonly string[] {
  const { kit, words, say } = lab;
  const { favourites, values, lead, gap, share } = perPiece;
  const known = values.flatMap((value) => (value === null ? [] : [value]));
  const [highest, lowest] = [Math.max(...known), Math.min(...known)];
  const second = Math.max(...known.filter((value) => value < highest));
  const next = kit.kinds.filter((_, k) => values[k] === second).map(({ name }) => name);
  const names = favourites.map((id) => labKindName(id, lab));
  const told = { lead: words.counted('points', lead), next: words.listed(next) };
  const favoured =
    gap === 0
      ? say('lab.favours-nobody')
      : names.length === 1
        ? say('lab.favours', { favourite: names[0] ?? '', ...told })
        : say('lab.favours-several', { favourites: words.listed(names), ...told });
  const apart = { highest: words.number(highest), lowest: words.number(lowest), gap: words.counted('points', gap) };
  return [
    favoured,
    say('lab.gap', apart),
    ...(share === null ? [] : [say('lab.share', { percent: words.number(Math.round(100 * share)) })]),
    ...(per100Cm2 === null
      ? []
      : [
          say('fair.favours-paper', {
            favourites: words.listed(per100Cm2.favourites.map((id) => labKindName(id, lab))),
          }),
        ]),
  ];
}

const oneDecimal = (value: number | null, { words, say }: TerminalLab): string =>
  value === null ? say('lab.not-known') : words.number(Math.round(10 * value) / 10, 1);
