// Held against what others published: the examples of RFC 9285, and the check value of CRC-32.

import { describe, expect, it } from 'vitest';
import { base45, bytesOfBase45 } from './base45.ts';
import { crc32 } from './crc32.ts';

const bytesOf = (text: string): Uint8Array => Uint8Array.from(text, (sign) => sign.charCodeAt(0));

describe('base 45', () => {
  // RFC 9285, sections 4.3 and 4.4.
  it.each([
    ['AB', 'BB8'],
    ['Hello!!', '%69 VD92EX0'],
    ['base-45', 'UJCLQE7W581'],
    ['ietf!', 'QED8WEX0'],
  ])('writes %s as %s and reads it back', (plain, text) => {
    expect(base45(bytesOf(plain))).toBe(text);
    expect(bytesOfBase45(text)).toEqual(bytesOf(plain));
  });

  // RFC 9285, section 6: what no two bytes give must be refused.
  it.each(['GGW', ':::', '::', 'A', 'ABCD', 'aB8', 'B\u00dc8'])('refuses %s', (text) => {
    expect(bytesOfBase45(text)).toBeNull();
  });
  it('takes the highest two bytes', () => {
    expect(bytesOfBase45('FGW')).toEqual(Uint8Array.of(255, 255));
  });
});

describe('the checksum', () => {
  it('of 123456789 is the published one', () => {
    expect(crc32(bytesOf('123456789'))).toBe(0xcbf43926);
  });
});
