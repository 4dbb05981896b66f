// Names that no source of a package may use: a package reads no clock, draws no random number and prints nothing, so
// that the same input gives the same answer everywhere. (What else a machine offers is no type there: see tsconfig.)

import { isTest, isTypeScript, listFiles, readText } from './files.ts';
import type { SyntaxNode } from './syntax.ts';
import { lineOf, nameOf, parse, textOf, walk } from './syntax.ts';

const BANNED = ['Date', 'console'];

/** Every use of a banned name below `root`, as lines "file:line: what is wrong". */
export function nameFaults(root: string): string[] {
  const sources = listFiles(root).filter((path) => path.startsWith('packages/') && isTypeScript(path) && !isTest(path));
  return sources.flatMap((path) => bannedNames(path, readText(root, path)));
}

function bannedNames(path: string, text: string): string[] {
  const faults: string[] = [];
  walk(parse(path, text), (node) => {
    const name = nameOf(node) ?? '';
    if (BANNED.includes(name)) faults.push(`${path}:${lineOf(text, node)}: a package may not use ${name}`);
    if (node.type === 'MemberExpression' && nameOf(node['object']) === 'Math' && memberName(node) === 'random') {
      faults.push(`${path}:${lineOf(text, node)}: a package may not use Math.random`);
    }
    return true;
  });
  return faults;
}

const memberName = (member: SyntaxNode): string | undefined => nameOf(member['property']) ?? textOf(member['property']);
