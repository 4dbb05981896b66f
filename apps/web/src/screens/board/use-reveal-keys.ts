// Places shown one by one with the keys of a presenter: right or Page Down for the next, left or Page Up to hide it again.

import { useEffect } from 'preact/hooks';

export function useRevealKeys(isOn: boolean, step: (by: 1 | -1) => void): void {
  useEffect(() => {
    if (!isOn) return;
    const press = (event: KeyboardEvent): void => {
      const by = STEPS.get(event.key);
      if (by === undefined || event.defaultPrevented || event.ctrlKey || event.altKey || event.metaKey) return;
      if (event.target instanceof Element && event.target.closest(KEEPS_ITS_KEYS) !== null) return;
      event.preventDefault();
      step(by);
    };
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  }, [isOn, step]);
}

const STEPS: ReadonlyMap<string, 1 | -1> = new Map([
  ['ArrowRight', 1],
  ['PageDown', 1],
  ['ArrowLeft', -1],
  ['PageUp', -1],
]);

const KEEPS_ITS_KEYS = ['dialog', 'input', 'select', 'textarea', '[data-scrolls]'].join();
