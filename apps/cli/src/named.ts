// Things by what a person typed: their id, or the name that the class gave them, whatever its capitals. And which of the
// words of a call name a file.

export interface Named {
  readonly id: string;
  readonly name: string;
}

export const namedAs = <T extends Named>(list: readonly T[], typed: string): T | undefined =>
  list.find(({ id }) => id === typed) ?? list.find(({ name }) => name.toLowerCase() === typed.toLowerCase());

/** The names of all, to choose from. */
export const knownNames = (list: readonly Named[]): string => list.map(({ name }) => name).join(', ');

/** Names of files end in .json; what else stands beside the command is asked about. */
export function filesAndNames(rest: readonly string[]): {
  readonly files: readonly string[];
  readonly names: readonly string[];
} {
  return { files: rest.filter(isFile), names: rest.filter((word) => !isFile(word)) };
}

const isFile = (word: string): boolean => /\.json$/i.test(word);
