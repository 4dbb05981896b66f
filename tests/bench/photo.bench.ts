// Markers and camera of the towers' photos, against a general finder of markers: js-aruco2 (MIT), which finds the markers alone, to whole
// pixels, and fits no camera. Both are handed the same decoded pixels.

import { findMarkers, fitCamera } from '@cairnmark/photo';
import aruco from 'js-aruco2';
import 'js-aruco2/src/dictionaries/aruco_4x4_1000.js';
import { readPhoto, TOWERS } from '../reference/photos/truth.ts';
import type { Report } from './measure.ts';
import { interleave } from './measure.ts';

export const name = 'photo: markers and camera, beside a general finder of markers';

const PHOTOS = 6;
const ROUNDS = 5;

/** The public dictionary of 50 that ours are the first of; distances below this pass, so one wrong bit does, as with us. */
const [CODES, DISTANCE] = [50, 2];
const OUR_IDS = 8;

export function run(report: Report): void {
  const general = generalFinder();
  for (const view of ['top', 'side'] as const) {
    const photos = TOWERS.slice(0, PHOTOS).map((tower) => readPhoto(tower, view));
    const times = photos.map((photo) =>
      interleave(
        {
          detection: () => findMarkers(photo),
          camera: () => fitCamera(findMarkers(photo), SHEET, { focal35Mm: null }),
          general: () => general.detectImage(photo.width, photo.height, photo.data),
        },
        ROUNDS,
      ),
    );
    const sum = (way: 'detection' | 'camera' | 'general'): number =>
      times.reduce((total, time) => total + time[way], 0);
    const ratio = (way: 'detection' | 'camera'): number => sum(way) / sum('general');
    report({ label: `${view}: detection, of the general finder's`, value: ratio('detection'), unit: 'x' });
    report({
      label: `${view}: detection and camera, of its detection`,
      value: ratio('camera'),
      unit: 'x',
      target: 'under 3',
    });
    report({ label: `${view}: detection and camera, a photo`, value: sum('camera') / PHOTOS, unit: 'ms' });
    const ours = photos.flatMap((photo) => findMarkers(photo).markers);
    const others = photos.flatMap((photo) => general.detectImage(photo.width, photo.height, photo.data));
    report({ label: `${view}: markers found in ${PHOTOS} photos`, value: ours.length, unit: '' });
    report({
      label: `${view}: by the general finder`,
      value: others.filter(({ id }) => id < OUR_IDS).length,
      unit: '',
    });
  }
}

const SHEET = { kind: 'ground', paper: 'a4', pages: 1, printScale: 1 } as const;

function generalFinder(): InstanceType<typeof aruco.AR.Detector> {
  const { DICTIONARIES, Detector } = aruco.AR;
  const large = DICTIONARIES['ARUCO_4X4_1000'];
  if (large === undefined) throw new Error('the dictionary is not in the package');
  DICTIONARIES['FIFTY'] = { ...large, codeList: large.codeList.slice(0, CODES) };
  return new Detector({ dictionaryName: 'FIFTY', maxHammingDistance: DISTANCE });
}
