// The readers of PDF for the tests of printed sheets: pdftoppm and pdftotext of poppler-utils, which share nothing with our
// writer. Where there are none they are installed; where that cannot be, these tests are skipped, and counted as skipped.

import { spawnSync } from 'node:child_process';

/** @typedef {import('./browser.mjs').Machine} Machine */
/** @typedef {import('./browser.mjs').Way} Way */

export const NO_POPPLER =
  'The tests that read printed sheets need pdftoppm and pdftotext (poppler-utils). They were not found on this machine ' +
  'and could not be installed, so these tests are skipped.';

/** @type {Way} */
const APT = {
  says: 'Installing poppler-utils with apt-get (once) ...',
  commands: [
    ['apt-get', 'update'],
    ['apt-get', 'install', '--yes', '--no-install-recommends', 'poppler-utils'],
  ],
};

/** Whether both programs start here. */
export const hasPoppler = () =>
  ['pdftoppm', 'pdftotext'].every((program) => spawnSync(program, ['-v'], { stdio: 'ignore' }).status === 0);

/**
 * Installs them where they are missing; a sentence when they are missing still.
 * @param {Pick<Machine, 'mayUseApt'>} machine
 * @param {(way: Way) => void} install
 * @param {() => boolean} has
 * @returns {string | undefined}
 */
export function getPoppler({ mayUseApt }, install, has = hasPoppler) {
  if (has()) return undefined;
  if (mayUseApt) install(APT);
  return has() ? undefined : NO_POPPLER;
}
