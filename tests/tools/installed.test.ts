import { describe, expect, it } from 'vitest';
import { getPictures, NO_PICTURES } from './pictures.mjs';
import { getPoppler, NO_POPPLER } from './poppler.mjs';

/** What was installed on a machine, and what was said. */
function got(
  get: typeof getPoppler,
  has: boolean,
  mayUseApt: boolean,
  works: boolean,
): { says: string | undefined; installed: number } {
  let [there, installed] = [has, 0];
  const install = (): void => {
    installed += 1;
    there ||= works;
  };
  const says = get({ mayUseApt }, install, () => there);
  return { says, installed };
}

describe.each([
  ['the readers of PDF', getPoppler, NO_POPPLER],
  ['real photographs and a second finder', getPictures, NO_PICTURES],
])('%s', (_, get, none) => {
  it('are installed only where they are missing and may be', () => {
    expect(got(get, true, true, true)).toEqual({ says: undefined, installed: 0 });
    expect(got(get, false, true, true)).toEqual({ says: undefined, installed: 1 });
  });

  it('where there are none, the tests that need them are said to be skipped', () => {
    expect(got(get, false, false, true)).toEqual({ says: none, installed: 0 });
    expect(got(get, false, true, false)).toEqual({ says: none, installed: 1 });
  });
});
