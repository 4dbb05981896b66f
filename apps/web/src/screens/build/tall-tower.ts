// From which height on a tower is dangerous to stand under.

import type { Report } from '@cairnmark/engine';

/** mm. The eyes of a standing child of seven are at about 1.1 m (from memory): what falls from above a metre can fall into a face. */
export const TALL_TOWER_MM = 1000;

/** Whether a build is so tall, by its drawing or by the ruler, that the caution is shown with it. */
export function isTallTower(report: Pick<Report, 'facts'> | null): boolean {
  const height = report?.facts.find(({ id }) => id === 'height');
  const drawnMm = height?.predicted?.status === 'measured' ? height.predicted.value : 0;
  return Math.max(drawnMm, height?.value ?? 0) > TALL_TOWER_MM;
}
