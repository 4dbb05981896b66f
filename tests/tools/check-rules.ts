// Every rule of scoring has an id, and every id has a test that names it. In RULES.md a rule is a line "- [P1] text";
// a test names it at the head of its title: it('[P1] ...') or it('[P1] [P2] ...').

import { listFiles, readText } from './files.ts';
import { parse, textOf, walk } from './syntax.ts';

const RULES = 'packages/scoring/RULES.md';

/** Rules without a test, tests of unknown rules and ids given twice, as lines that say so. */
export function ruleFaults(root: string): string[] {
  const rules = idsIn(readText(root, RULES));
  const tested = new Map(
    listFiles(root)
      .filter((path) => /\.test\.tsx?$/.test(path) && !path.startsWith('tests/tools/'))
      .map((path) => [path, idsTested(path, readText(root, path))]),
  );
  const named = new Set([...tested.values()].flat());
  return [
    ...(rules.length === 0 ? [`${RULES}: holds no rule; a rule is a line "- [P1] text"`] : []),
    ...rules.filter((id, k) => rules.indexOf(id) !== k).map((id) => `${RULES}: [${id}] is given twice`),
    ...rules.filter((id) => !named.has(id)).map((id) => `${RULES}: no test names [${id}]`),
    ...[...tested].flatMap(([path, ids]) =>
      [...new Set(ids)].filter((id) => !rules.includes(id)).map((id) => `${path}: [${id}] is no rule of ${RULES}`),
    ),
  ];
}

function idsIn(rules: string): string[] {
  return rules.split('\n').flatMap((line) => /^- \[([A-Z]+\d+)\] /.exec(line)?.[1] ?? []);
}

function idsTested(path: string, text: string): string[] {
  const ids: string[] = [];
  walk(parse(path, text), (node) => {
    const head = /^(\[[A-Z]+\d+\] ?)+/.exec(textOf(node) ?? '')?.[0] ?? '';
    ids.push(...head.split(/[[\] ]+/).filter((id) => id !== ''));
    return true;
  });
  return ids;
}
