// Nothing in the repository points at one person's machine or at a registry: such lines are wrong for everybody else.

import { listFiles, readText } from './files.ts';

const PATTERNS: readonly (readonly [RegExp, string])[] = [
  [/\/(home|work|Users|root)\/[\w.]/, 'a path of one machine'],
  [/\bC:\\+[A-Z]/, 'a path of one machine'],
  [/"resolved": ?"http/, 'an address of a registry: set omit-lockfile-registry-resolved in .npmrc'],
  [/registry\.\w+\.(org|com|io|dev)\b/, 'an address of a registry'],
  [/\bissue #?\d/i, 'a number of a list that the repository does not hold'],
];

/** Every such place below `root`, as lines "file:line: what it is". */
export function placeFaults(root: string): string[] {
  return listFiles(root).flatMap((path) =>
    readText(root, path)
      .split('\n')
      .flatMap((line, k) =>
        PATTERNS.flatMap(([pattern, what]) => (pattern.test(line) ? [`${path}:${k + 1}: ${what}`] : [])),
      ),
  );
}
