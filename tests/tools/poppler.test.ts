import { expect, it } from 'vitest';
import { getPoppler, NO_POPPLER } from './poppler.mjs';

/** What was installed on a machine, and what was said. */
function got(has: boolean, mayUseApt: boolean, works: boolean): { says: string | undefined; installed: number } {
  let [there, installed] = [has, 0];
  const install = (): void => {
    installed += 1;
    there ||= works;
  };
  const says = getPoppler({ mayUseApt }, install, () => there);
  return { says, installed };
}

it('the readers of PDF are installed only where they are missing and may be', () => {
  expect(got(true, true, true)).toEqual({ says: undefined, installed: 0 });
  expect(got(false, true, true)).toEqual({ says: undefined, installed: 1 });
});

it('without them the tests that need them are said to be skipped', () => {
  expect(got(false, false, true)).toEqual({ says: NO_POPPLER, installed: 0 });
  expect(got(false, true, false)).toEqual({ says: NO_POPPLER, installed: 1 });
});
