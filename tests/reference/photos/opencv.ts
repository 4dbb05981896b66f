// What a general library of computer vision finds in the same pictures: OpenCV, by Debian's python3-opencv (tests/tools/pictures.mjs).
// Its pixels have their middles at whole numbers, ours at halves.

import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';
import { hasMarkerFinder, hasPictures, PICTURES_FOLDER, PYTHON } from '../../tools/pictures.mjs';
import type { Point2, Point3 } from './camera-of-truth.ts';

export interface SecondMarker {
  readonly id: number;
  readonly corners: readonly Point2[];
}

export const secondOpinion: boolean = hasMarkerFinder();
export const chessboardsThere: boolean = secondOpinion && hasPictures();

/** Inner corners of the chessboards: columns, rows, and mm between them (examples/data/left_intrinsics.yml of opencv-doc). */
export const BOARD = { columns: 9, rows: 6, squareMm: 25 } as const;

/** The pictures that examples/data/stereo_calib.xml of opencv-doc lists. */
export const CHESSBOARDS: readonly string[] = ['left', 'right'].flatMap((side) =>
  [1, 2, 3, 4, 5, 6, 7, 8, 9, 11, 12, 13, 14].map((k) => `${side}${String(k).padStart(2, '0')}`),
);

/** Of each picture the inner corners row by row, px; empty where the board is not found. All are 640 by 480 px. */
export function chessboardCorners(names: readonly string[]): readonly (readonly Point2[])[] {
  const files = names.map((name) => `${PICTURES_FOLDER}/examples/data/${name}.jpg`);
  return asked<Point2[][]>(CHESSBOARD_SCRIPT, files);
}

/** The markers in each photo of tests/corpus/photos, named without their ending. */
export function secondMarkers(names: readonly string[]): readonly (readonly SecondMarker[])[] {
  const files = names.map((name) => resolve('tests/corpus/photos', `${name}.jpg`));
  return asked<SecondMarker[][]>(MARKER_SCRIPT, files);
}

export interface PoseAsk {
  readonly focalPx: number;
  readonly k1: number;
  readonly middlePx: Point2;
  /** Points of the sheet, mm, and where they show, px. */
  readonly points: readonly (readonly [mm: Point2, pixel: Point2])[];
}

/** Where the lens is above the sheet, mm, by the other library's own least squares. */
export const secondLenses = (asks: readonly PoseAsk[]): readonly Point3[] =>
  asked<Point3[]>(POSE_SCRIPT, [JSON.stringify(asks)]);

const POSE_SCRIPT = `
import cv2, json, sys
import numpy as np
out = []
for ask in json.loads(sys.argv[1]):
    cx, cy = ask['middlePx']
    K = np.array([[ask['focalPx'], 0, cx], [0, ask['focalPx'], cy], [0, 0, 1]], dtype=float)
    object_points = np.array([[mm[0], mm[1], 0] for mm, _ in ask['points']], dtype=float)
    image_points = np.array([pixel for _, pixel in ask['points']], dtype=float)
    ok, turn, shift = cv2.solvePnP(object_points, image_points, K, np.array([ask['k1'], 0, 0, 0], dtype=float))
    R, _ = cv2.Rodrigues(turn)
    out.append([float(v) for v in (-R.T @ shift).flatten()])
print(json.dumps(out))
`;

const CHESSBOARD_SCRIPT = `
import cv2, json, sys
out = []
for file in sys.argv[1:]:
    grey = cv2.imread(file, cv2.IMREAD_GRAYSCALE)
    ok, corners = cv2.findChessboardCorners(grey, (${BOARD.columns}, ${BOARD.rows}))
    if ok:
        stop = (cv2.TERM_CRITERIA_EPS + cv2.TERM_CRITERIA_COUNT, 50, 0.001)
        corners = cv2.cornerSubPix(grey, corners, (5, 5), (-1, -1), stop)
    out.append([[float(x) + 0.5, float(y) + 0.5] for [[x, y]] in corners] if ok else [])
print(json.dumps(out))
`;

const MARKER_SCRIPT = `
import cv2, json, sys
from cv2 import aruco
new = hasattr(aruco, 'ArucoDetector')
book = aruco.getPredefinedDictionary(aruco.DICT_4X4_50)
ways = aruco.DetectorParameters() if new else aruco.DetectorParameters_create()
ways.cornerRefinementMethod = aruco.CORNER_REFINE_SUBPIX
out = []
for file in sys.argv[1:]:
    grey = cv2.imread(file, cv2.IMREAD_GRAYSCALE)
    found = aruco.ArucoDetector(book, ways).detectMarkers(grey) if new else aruco.detectMarkers(grey, book, parameters=ways)
    corners, ids = found[0], found[1]
    out.append([] if ids is None else [
        {'id': int(i), 'corners': [[float(x) + 0.5, float(y) + 0.5] for x, y in quad[0]]}
        for i, quad in zip(ids.flatten(), corners)])
print(json.dumps(out))
`;

function asked<T>(script: string, files: readonly string[]): T {
  const { status, stdout, stderr } = spawnSync(PYTHON, ['-c', script, ...files], { maxBuffer: 2 ** 26 });
  if (status !== 0) throw new Error(stderr.toString());
  return JSON.parse(stdout.toString());
}
