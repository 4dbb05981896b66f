// Names that a source may not use. A package reads no clock, draws no random number and prints nothing, so that the same
// input gives the same answer everywhere. (What else a machine offers is no type there: see tsconfig.) The pages of the
// web app print nothing either: what went wrong is told on the page, where somebody reads it.

import { isTest, isTypeScript, listFiles, readText } from './files.ts';
import type { SyntaxNode } from './syntax.ts';
import { lineOf, nameOf, parse, textOf, walk } from './syntax.ts';

/** Home -> the names, and how the home is called. */
const BANNED: Readonly<Record<string, { readonly who: string; readonly names: readonly string[] }>> = {
  'packages/': { who: 'a package', names: ['Date', 'console', 'Math.random'] },
  'apps/web/src/': { who: 'a page', names: ['console', 'Math.random'] },
};

/** Every use of a banned name below `root`, as lines "file:line: what is wrong". */
export function nameFaults(root: string): string[] {
  const sources = listFiles(root).filter((path) => isTypeScript(path) && !isTest(path));
  return Object.entries(BANNED).flatMap(([home, { who, names }]) =>
    sources
      .filter((path) => path.startsWith(home))
      .flatMap((path) => {
        const text = readText(root, path);
        return bannedNames(path, text, names).map(({ line, name }) => `${path}:${line}: ${who} may not use ${name}`);
      }),
  );
}

function bannedNames(path: string, text: string, banned: readonly string[]): { line: number; name: string }[] {
  const found: { line: number; name: string }[] = [];
  walk(parse(path, text), (node) => {
    const name = nameOf(node) ?? memberPath(node);
    if (banned.includes(name)) found.push({ line: lineOf(text, node), name });
    return true;
  });
  return found;
}

/** "Math.random", also where it is written Math['random']; '' for other nodes. */
function memberPath(node: SyntaxNode): string {
  if (node.type !== 'MemberExpression') return '';
  return `${nameOf(node['object'])}.${nameOf(node['property']) ?? textOf(node['property'])}`;
}
