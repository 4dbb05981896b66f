// An id that no other class has.

/** 128 bits by chance. Browsers keep their own maker of such ids from pages that come over plain http, as in a school network. */
export const freshId = (): string =>
  Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) => byte.toString(16).padStart(2, '0')).join('');
