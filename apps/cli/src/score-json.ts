// Scores as data: all that the engine found, with its units (mm, mm2, mm3, counts).

import type { ClassRecord, ClassScore } from '@cairnmark/engine';

export function scoreJson({ name, invented }: ClassRecord, { reports, standings, day, warnings }: ClassScore): string {
  const all = {
    class: name,
    invented,
    standings: Object.fromEntries(standings),
    day,
    warnings,
    reports: Object.fromEntries(reports),
  };
  return `${JSON.stringify(all, null, 2)}\n`;
}
