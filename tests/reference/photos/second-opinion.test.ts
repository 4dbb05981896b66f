// Our markers are the first of a public dictionary (4x4 cells, 50 codes), so that a general library finds them too.

import { describe, expect, it } from 'vitest';
import { inTurn, share } from '../../tools/share.ts';
import { quantile } from './accuracy.ts';
import { secondOpinion } from './opencv.ts';
import { comparedMarkers, comparedPoses } from './second-opinion.ts';
import { TOWERS } from './truth.ts';

const CHOSEN = inTurn(TOWERS, 3, 'second opinion');

describe.skipIf(!secondOpinion)(`${CHOSEN.length} of 12 towers, by us and by OpenCV`, () => {
  it.each(['top', 'side'] as const)('%s: markers have the same ids and corners', (view) => {
    const { both, oursAlone, othersAlone, apartPx, middlesApartPx } = comparedMarkers(
      CHOSEN.map((tower) => [tower, view]),
    );
    const both95 = (values: readonly number[]): string =>
      `${quantile(values, 0.5).toFixed(2)} / ${quantile(values, 0.95).toFixed(2)} px`;
    process.stdout.write(
      `markers, ${view}: ${both} seen by both, ${oursAlone} by us alone, ${othersAlone} by OpenCV alone; apart, median / 95 %: ` +
        `corners ${both95(apartPx)}, middles ${both95(middlesApartPx)}\n`,
    );
    expect(both).toBeGreaterThan(3 * CHOSEN.length);
    expect(othersAlone).toBe(0);
    expect(quantile(apartPx, 0.5)).toBeLessThan(1.1);
    expect(quantile(apartPx, 0.95)).toBeLessThan(2);
    expect(quantile(middlesApartPx, 0.5)).toBeLessThan(0.15);
    // Of a few markers the 95th of a hundred is the worst: one that a piece half hides.
    expect(quantile(middlesApartPx, 0.95)).toBeLessThan(share(0.5, 3));
  });

  it('the lens was where OpenCV finds it from the corners that it sees itself', () => {
    const towers = share(CHOSEN, CHOSEN.slice(0, 1));
    const apart = comparedPoses(towers.flatMap((tower) => [[tower, 'top'] as const, [tower, 'side'] as const]));
    const shares = apart.map((one) => 100 * one);
    expect(shares.length).toBeGreaterThan(0);
    process.stdout.write(
      `lens, ${shares.length} photos: ${quantile(shares, 0.5).toFixed(2)} / ${quantile(shares, 1).toFixed(2)} % apart, median / most\n`,
    );
    // Its corners are a pixel off (see above), of markers some 70 px wide.
    expect(quantile(shares, 0.5)).toBeLessThan(share(0.5, 3));
    expect(quantile(shares, 1)).toBeLessThan(5);
  });
});
