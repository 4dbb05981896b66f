// A page that cannot take the newer version begins as it is: never a blank one.

import { afterEach, expect, it, vi } from 'vitest';
import { takeNewer } from './take-newer.ts';

afterEach(() => vi.unstubAllGlobals());

const HERE = 'https://host.example/app/';

/** `answers`: what the waiting worker says to each question. */
function device(answers: Readonly<Record<string, boolean>>, scope = HERE) {
  const reload = vi.fn();
  const changed: { listener: () => void } = { listener: () => undefined };
  const postMessage = (question: string, [port]: readonly [MessagePort]): void => {
    const answer = answers[question];
    if (answer === undefined) throw new DOMException('gone', 'InvalidStateError');
    port.postMessage(answer);
    if (question === 'take-over' && answer) changed.listener();
  };
  const serviceWorker = {
    controller: {},
    getRegistration: async () => ({ scope, waiting: { postMessage } }),
    addEventListener: (_: string, listener: () => void) => Object.assign(changed, { listener }),
  };
  vi.stubGlobal('navigator', { serviceWorker });
  vi.stubGlobal('location', { href: `${HERE}#/build`, reload });
  return reload;
}

it.each([
  ['the only page takes it and loads itself anew', { 'alone?': true, 'take-over': true }, HERE, true],
  ['another page is open', { 'alone?': false }, HERE, false],
  ['another page was opened meanwhile', { 'alone?': true, 'take-over': false }, HERE, false],
  ['the worker is gone when it is asked', {}, HERE, false],
  ['the worker is gone when it is to take over', { 'alone?': true }, HERE, false],
  ['the worker is that of the whole host', { 'alone?': true, 'take-over': true }, 'https://host.example/', false],
] as const)('%s', async (_, answers, scope, taken) => {
  const reload = device(answers, scope);
  expect(await takeNewer()).toBe(taken);
  expect(reload).toHaveBeenCalledTimes(taken ? 1 : 0);
});
