// A part of a page: a blank line, a heading with its own punctuation, and lines set in; nothing at all without lines.

export function section(heading: string, lines: readonly string[]): readonly string[] {
  return lines.length > 0 ? ['', heading, ...lines.map((line) => `  ${line}`)] : [];
}
