// Base45 (RFC 9285): bytes as the 45 signs that a QR code holds in 5.5 bits each, so that any reader gives them back alike.
// Two bytes make three signs, a last single byte two.

const SIGNS = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:';
const BASE = SIGNS.length;
const BYTE = 256;

export function base45(bytes: Uint8Array): string {
  let text = '';
  for (let k = 0; k < bytes.length; k += 2) {
    const [first = 0, second] = bytes.subarray(k, k + 2);
    text += second === undefined ? signs(first, 2) : signs(first * BYTE + second, 3);
  }
  return text;
}

/** null: no text that `base45` gives. */
export function bytesOfBase45(text: string): Uint8Array | null {
  const bytes: number[] = [];
  for (let k = 0; k < text.length; k += 3) {
    const three = text.slice(k, k + 3);
    const value = valueOf(three);
    if (three.length === 1 || value === null || value >= (three.length === 3 ? BYTE * BYTE : BYTE)) return null;
    bytes.push(...(three.length === 3 ? [Math.floor(value / BYTE), value % BYTE] : [value]));
  }
  return Uint8Array.from(bytes);
}

/** The lowest place first. */
function signs(value: number, count: number): string {
  let [text, rest] = ['', value];
  for (let k = 0; k < count; k += 1) {
    text += SIGNS.charAt(rest % BASE);
    rest = Math.floor(rest / BASE);
  }
  return text;
}

function valueOf(text: string): number | null {
  let value = 0;
  for (const sign of [...text].reverse()) {
    const digit = SIGNS.indexOf(sign);
    if (digit < 0) return null;
    value = value * BASE + digit;
  }
  return value;
}
