// Examples in the documents that are run as written: a fence "sh" followed by a fence "text" that shows what it prints.
// In the printed text a line "..." stands for any lines left out.

import { spawnSync } from 'node:child_process';
import { readMarkdown } from './markdown.ts';

export interface DocExample {
  readonly script: string;
  readonly printed: string;
  /** Line, from 1, of the script's opening fence. */
  readonly line: number;
}

export function examplesIn(markdown: string): DocExample[] {
  const { fences } = readMarkdown(markdown);
  return fences.flatMap((fence, k) => {
    const next = fences[k + 1];
    const isExample = fence.language === 'sh' && next?.language === 'text' && next.followsFence;
    return isExample ? [{ script: fence.body, printed: next.body, line: fence.line }] : [];
  });
}

/** What the script prints on standard output, run by bash in `folder` with English asked for. Throws when it fails. */
export function runExample(script: string, folder: string): string {
  const { PATH, HOME } = process.env;
  const { status, stdout, stderr } = spawnSync('bash', ['-euo', 'pipefail', '-c', script], {
    cwd: folder,
    env: { PATH, HOME, LANG: 'en_GB.UTF-8' },
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(`the example ended with ${status}:\n${script}\n${stdout}${stderr}`);
  return stdout;
}

/** What was printed, with the lines left out that `shown` leaves out, so that the two compare line by line. */
export function likeShown(printed: string, shown: string): string {
  const pattern = shown
    .trimEnd()
    .split('\n')
    .map((line) => (line === '...' ? '(?:.*\n)*?' : `${line.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')} *\n`))
    .join('');
  return new RegExp(`^${pattern}\n*$`).test(`${printed.trimEnd()}\n`) ? shown : printed;
}
