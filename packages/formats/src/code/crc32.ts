// CRC-32, the checksum of zip and PNG files: a code of which a part was misread does not have its own.

/** The polynomial of ISO/IEC 8802-3, its bits the other way round. */
const POLYNOMIAL = 0xedb88320;

export function crc32(bytes: Uint8Array): number {
  let rest = 0xffffffff;
  for (const byte of bytes) {
    rest ^= byte;
    for (let bit = 0; bit < 8; bit += 1) rest = rest & 1 ? (rest >>> 1) ^ POLYNOMIAL : rest >>> 1;
  }
  return ~rest >>> 0;
}
