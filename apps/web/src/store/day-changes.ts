// Changes to the rule of the whole day.

import type { DayRule } from '@cairnmark/scoring';
import type { Change } from './class-changes.ts';

export const changeDay =
  (change: (day: DayRule) => DayRule): Change =>
  (record) => ({ ...record, day: change(record.day) });

/** 1 is usual, and need not be listed. */
export const withWeight =
  (challenge: string, weight: number): Change =>
  (record) => {
    const { [challenge]: _, ...others } = record.day.weights;
    const weights = weight === 1 ? others : { ...others, [challenge]: weight };
    return { ...record, day: { ...record.day, weights } };
  };

export const withPlacePoints =
  (place: number, points: number): Change =>
  (record) =>
    changeDay((day) => ({
      ...day,
      placePoints: day.placePoints.map((one, k) => (k === place ? points : one)),
    }))(record);

/** Points for one place more; as many as the last one has, less 1, where that leaves any. */
export const addPlace: Change = (record) =>
  changeDay((day) => ({ ...day, placePoints: [...day.placePoints, Math.max(0, (day.placePoints.at(-1) ?? 2) - 1)] }))(
    record,
  );

export const removeLastPlace: Change = (record) =>
  changeDay((day) => ({ ...day, placePoints: day.placePoints.slice(0, -1) }))(record);
