// The ground sheet for photos, and paper balls from strips.

import type { Page } from '@cairnmark/print';
import { goreSheets, groundPages } from '@cairnmark/print';
import type { Outcome } from '../read-files.ts';
import type { Job } from './job.ts';
import type { Made } from './made.ts';

export function printGround({ faultLine, options, paper, printed }: Job): Outcome<Made> {
  const sheet = options.forts ? 'four-pages' : 'one-page';
  const pages = groundPages(sheet, paper, printed);
  if (!pages.ok) return { ok: false, faults: pages.issues.map(faultLine) };
  const title = printed.say(`print.ground-${sheet}`);
  return { ok: true, value: { title, pages: pages.value, drawings: [], lines: [] } };
}

/** A ball for every kind of ball in the kit, whatever it is made of. */
export function printGores({ challenge, faultLine, paper, printed, record, words }: Job): Outcome<Made> {
  const balls = challenge.kit.kinds.filter(({ solid }) => solid.solid === 'sphere');
  if (balls.length === 0) return { ok: false, faults: [words.say('print.no-balls')] };
  const made = balls.map(({ name, solid: { sizes } }) => {
    const radiusMm = sizes['radius'] ?? (sizes['diameter'] ?? Number.NaN) / 2;
    return goreSheets({ name, radiusMm, paper, invented: record.invented }, printed);
  });
  const faults = made.flatMap((sheet) => (sheet.ok ? [] : sheet.issues.map(faultLine)));
  if (faults.length > 0) return { ok: false, faults };
  const pages = made.flatMap((sheet): readonly Page[] => (sheet.ok ? sheet.value : []));
  const title = printed.say('print.gores', { kind: balls.map(({ name }) => name).join(', ') });
  return { ok: true, value: { title, pages, drawings: [], lines: [] } };
}
