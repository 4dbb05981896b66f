// Browsers that keep nothing, and devices without room.

import type { Page } from 'playwright-core';

/** Run before the app (`before` of a device): each leaves a browser without a database, in its own way. */
export const KEEPING_NOTHING = {
  'has no database': (): void => {
    Object.defineProperty(window, 'indexedDB', { value: undefined });
  },
  'forbids the database': (): void => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('', 'SecurityError');
    };
  },
  'cannot open the database': (): void => {
    const open = IDBFactory.prototype.open;
    // A version below 1 is refused at once, one below that of the database by an error event.
    IDBFactory.prototype.open = function (name) {
      open.call(this, name, 7);
      return open.call(this, name, 3);
    };
  },
  'has no memory for settings either': (): void => {
    Object.defineProperty(window, 'indexedDB', { value: undefined });
    Storage.prototype.getItem = () => {
      throw new DOMException('', 'SecurityError');
    };
    Storage.prototype.setItem = Storage.prototype.getItem;
  },
} as const;

/** Gives the device so much room for the app, in bytes; null: as much as it likes. */
export type GiveRoom = (bytes: number | null) => Promise<void>;

/** The room of the page's device. What is given holds as long as the page is open. */
export async function roomOf(page: Page): Promise<GiveRoom> {
  const session = await page.context().newCDPSession(page);
  const { origin } = new URL(page.url());
  return async (bytes) => {
    await session.send('Storage.overrideQuotaForOrigin', bytes === null ? { origin } : { origin, quotaSize: bytes });
  };
}
