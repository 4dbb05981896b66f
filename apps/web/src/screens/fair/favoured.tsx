// Whom the points favour, by how much, and how far apart the highest and the lowest are.

import type { Earned } from '@cairnmark/scoring';
import { labKindName } from '@cairnmark/words';
import { decimalsOf, rounded } from './earned.ts';
import type { Lab } from './lab.ts';
import { useLab } from './lab.ts';

export function Favoured({ earned }: { readonly earned: Earned }) {
  const lab = useLab();
  const { say, words, at, rates, kit, cost } = lab;
  const decimals = decimalsOf(earned.values);
  const points = (value: number): string => words.counted('points', rounded(value), decimals);
  const known = earned.values.flatMap((value) => value ?? []);
  if (known.length === 0) return null;
  const [highest, lowest] = [Math.max(...known), Math.min(...known)];
  const isRounded = cost === 'piece' && kit.rows.some(({ per }, j) => per !== 1 && (rates[j] ?? 0) !== 0);
  // A share is read from grade 6 on (ratios, 6.RP.A.1).
  const withShare = at.challenge.gradePreset === 'grades-6-8' && earned.share !== null && earned.gap > 0;
  return (
    <div className="fair-said" role="status">
      <p>
        <b>{favouredText(earned, highest, lab)}</b>{' '}
        {earned.gap > 0 &&
          say('lab.gap', {
            highest: points(highest),
            lowest: points(lowest),
            gap: points(rounded(highest) - rounded(lowest)),
          })}{' '}
        {withShare && say('lab.share', { percent: words.number(Math.round(100 * (earned.share ?? 0))) })}
      </p>
      {isRounded && <p className="mut">{say('lab.about')}</p>}
    </div>
  );
}

function favouredText({ values, favourites, gap }: Earned, highest: number, lab: Lab): string {
  const { say, words, kit } = lab;
  if (gap === 0) return say(highest === 0 ? 'lab.nobody-earns' : 'lab.favours-nobody');
  const below = values.map((value) => (value === null || value >= highest ? Number.NEGATIVE_INFINITY : value));
  const second = Math.max(...below);
  const nexts = kit.kinds.filter((_, k) => below[k] === second).map(({ name }) => name);
  // The difference of the two numbers that are seen, so that whoever takes them away from each other finds it.
  const lead = words.counted('points', rounded(highest) - rounded(second), decimalsOf(values));
  const told = { lead, next: words.listed(nexts) };
  const [first, ...others] = favourites.map((id) => labKindName(id, lab));
  return others.length === 0
    ? say('lab.favours', { favourite: first ?? '', ...told })
    : say('lab.favours-several', { favourites: words.listed([first ?? '', ...others]), ...told });
}
