// A name that people gave, as the name of a file.

/** Letters of plain ASCII, digits and dashes: what every system takes. */
export const fileName = (name: string): string =>
  name
    .normalize('NFKD')
    .replace(/[^\w\s-]/g, '')
    .trim()
    .replace(/\s+/g, '-')
    .toLowerCase() || 'cairnmark';
