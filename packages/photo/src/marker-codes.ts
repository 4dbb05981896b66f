// The codes of the markers by their ids: the first 32 of a public dictionary of four by four cells (DICT_4X4_50 of OpenCV,
// modules/aruco/src/predefined_dictionaries.hpp), so that general libraries can read our sheet and check our detector.

/** Four rows of four cells; 1 is white. */
const ROWS: readonly string[] = [
  '1011 0101 0011 0010',
  '0000 1111 1001 1010',
  '0011 0011 0010 1101',
  '1001 1001 0100 0110',
  '0101 0100 1001 1110',
  '0111 1001 1100 1101',
  '1001 1110 0010 1110',
  '1100 0100 1111 0010',
  '1111 1110 1101 1010',
  '1100 1111 0101 0110',
  '1111 1001 1001 0001',
  '0001 0001 1010 0111',
  '0000 1110 1011 0111',
  '0010 1010 0000 1111',
  '0010 0100 1011 0001',
  '0010 0110 0011 1110',
  '0100 0110 0110 0101',
  '0110 0110 0000 0000',
  '0110 1100 0101 1110',
  '0111 0110 1010 1111',
  '1000 0110 1000 1011',
  '1011 0000 0010 1011',
  '1100 1100 1101 0101',
  '1101 1101 1000 0010',
  '1111 1110 0100 0111',
  '1001 0100 0111 0001',
  '1010 1100 1110 0100',
  '1010 0101 0101 0100',
  '0010 0001 0010 0011',
  '0011 0100 0110 1111',
  '0100 0100 0001 0101',
  '0101 0111 1011 0010',
];

/** Sixteen cells, row by row from the top. */
export const MARKER_CODES: readonly string[] = ROWS.map((rows) => rows.replaceAll(' ', ''));
