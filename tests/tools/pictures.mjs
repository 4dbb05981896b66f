// What the tests of photographs hold themselves against: the pictures of opencv-doc, and the marker finder of python3-opencv, which
// shares nothing with ours. Where they are not they are installed; where that cannot be, these tests are skipped, and counted as skipped.

import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';

/** @typedef {import('./browser.mjs').Machine} Machine */
/** @typedef {import('./browser.mjs').Way} Way */

export const NO_PICTURES =
  'The tests that read real photographs need the pictures of opencv-doc, and one the marker finder of python3-opencv. Not both ' +
  'were found on this machine or could be installed, so the tests of what is missing are skipped.';

/** Where Debian puts the pictures of opencv-doc. */
export const PICTURES_FOLDER = '/usr/share/doc/opencv-doc';

/** Debian's own Python: another one on the path would not have its packages. */
export const PYTHON = '/usr/bin/python3';

/** @type {Way} */
const APT = {
  says: 'Installing opencv-doc and python3-opencv with apt-get (a minute or two, once) ...',
  commands: [
    ['apt-get', 'update'],
    ['apt-get', 'install', '--yes', '--no-install-recommends', 'opencv-doc'],
    ['apt-get', 'install', '--yes', '--no-install-recommends', 'python3-opencv'],
  ],
};

/** Whether the pictures are there; a machine may be told to keep no documents, and then the package is there without them. */
export const hasPictures = () => existsSync(join(PICTURES_FOLDER, 'examples', 'data', 'left01.jpg'));

/** Whether the marker finder starts here. */
export const hasMarkerFinder = () => spawnSync(PYTHON, ['-c', 'import cv2.aruco'], { stdio: 'ignore' }).status === 0;

/**
 * Installs them where they are missing; a sentence when one is missing still.
 * @param {Pick<Machine, 'mayUseApt'>} machine
 * @param {(way: Way) => void} install
 * @param {() => boolean} has
 * @returns {string | undefined}
 */
export function getPictures({ mayUseApt }, install, has = () => hasPictures() && hasMarkerFinder()) {
  if (has()) return undefined;
  if (mayUseApt) install(APT);
  return has() ? undefined : NO_PICTURES;
}
