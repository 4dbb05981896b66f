// The characters that a sheet can hold: those of WinAnsiEncoding (ISO 32000-1, annex D.2), in which the fonts that every
// program for PDF brings along are written. The letters of English and Spanish are among them; π, arrows and Ł are not.

/** The number of a character in that encoding; undefined when it has none. Of `character` the first one counts. */
export function winAnsiCode(character: string): number | undefined {
  const point = character.codePointAt(0) ?? 0;
  if ((point >= 0x20 && point <= 0x7e) || (point >= 0xa0 && point <= 0xff && point !== SOFT_HYPHEN)) return point;
  const place = FROM_0X80.indexOf(character);
  return place >= 0 ? 0x80 + place : undefined;
}

/** The characters of a text as they are encoded: é written as e and an accent becomes one character. */
export const charactersOf = (text: string): readonly string[] => [...text.normalize('NFC')];

/** The characters of a text that a sheet cannot hold, each once. */
export const foreignIn = (text: string): readonly string[] => [
  ...new Set(charactersOf(text).filter((character) => winAnsiCode(character) === undefined)),
];

/** Says where a word may be parted, and is not seen; the encoding would show it. */
const SOFT_HYPHEN = 0xad;

/** The characters from 0x80 to 0x9f; a space where there is none. */
const FROM_0X80 = [...'€ ‚ƒ„…†‡ˆ‰Š‹Œ Ž  ‘’“”•–—˜™š›œ žŸ'];
