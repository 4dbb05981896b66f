// Follows every path and every command that a Markdown file of the repository mentions: the path is there, the script
// stands in package.json, the program is installed. What a command prints is checked by tests/docs.test.ts.

import { existsSync } from 'node:fs';
import { join, posix } from 'node:path';
import { listFiles, readText } from './files.ts';
import { readMarkdown } from './markdown.ts';

/** Made by a build or an installation, so not there in a fresh clone. */
const MADE = /(^|\/)(node_modules|dist|coverage|\.cache)(\/|$)/;
const SOURCE_NAME = /\.(tsx?|mjs|md)$/;
const ANY_NAME = /\.(tsx?|mjs|md|json|csv|sh|svg|png)$/;

/** Every mention below `root` of something that is not there, as lines "file:line: what is wrong". */
export function docFaults(root: string): string[] {
  const tree = treeOf(root);
  return tree.files
    .filter((path) => path.endsWith('.md'))
    .flatMap((doc) =>
      mentionsIn(readText(root, doc)).flatMap(({ text, line }) => {
        const fault = isCommand(text) ? commandFault(text, doc, tree) : pathFault(text, doc, tree);
        return fault === undefined ? [] : [`${doc}:${line}: ${fault}`];
      }),
    );
}

interface Tree {
  readonly root: string;
  readonly files: readonly string[];
  readonly scripts: ReadonlySet<string>;
}

function treeOf(root: string): Tree {
  const { scripts = {} } = JSON.parse(readText(root, 'package.json'));
  return { root, files: listFiles(root), scripts: new Set(Object.keys(scripts)) };
}

function mentionsIn(text: string): { text: string; line: number }[] {
  const { fences, spans } = readMarkdown(text);
  const commands = fences
    .filter((fence) => fence.language === 'sh')
    .flatMap(({ body, line }) => body.split('\n').map((command, k) => ({ text: command.trim(), line: line + 1 + k })));
  return [...spans, ...commands];
}

const isCommand = (text: string): boolean => /^(npm|npx|node) /.test(text);

function commandFault(command: string, doc: string, tree: Tree): string | undefined {
  const [program, ...words] = command.split(/\s+/);
  const [first = '', second = ''] = words.filter((word) => !word.startsWith('-'));
  if (program === 'npm' && first === 'run' && !tree.scripts.has(second)) return `package.json has no script ${second}`;
  if (program === 'npm' && ['start', 'test'].includes(first) && !tree.scripts.has(first)) {
    return `package.json has no script ${first}`;
  }
  if (program === 'npx' && !existsSync(join(tree.root, 'node_modules', '.bin', first))) return `${first} is no program`;
  return words
    .filter((word) => word.includes('/'))
    .map((word) => pathFault(word, doc, tree))
    .find((fault) => fault !== undefined);
}

function pathFault(text: string, doc: string, tree: Tree): string | undefined {
  const path = text.replace(/#.*$/, '');
  if (!/^[\w.@*/-]+$/.test(path) || MADE.test(path)) return undefined;
  if (path.startsWith('@cairnmark/')) {
    return existsIn(path.replace('@cairnmark', 'packages'), tree) ? undefined : `there is no package ${path}`;
  }
  if (!path.includes('/')) {
    const known = !SOURCE_NAME.test(path) || tree.files.some((file) => matches(path, posix.basename(file)));
    return known ? undefined : `there is no file ${path}`;
  }
  const pointsInside = tree.files.some((file) => file.startsWith(`${path.split('/')[0]}/`));
  if (!pointsInside && !ANY_NAME.test(path) && !path.endsWith('/') && !path.startsWith('.')) return undefined;
  const folder = posix.dirname(doc);
  const places = [path, posix.join(folder, path), posix.join(folder, 'src', path)];
  return places.some((place) => existsIn(place, tree)) ? undefined : `there is no ${path}`;
}

/** True for a file, for a folder that holds one, and for a pattern with `*` that some file fits. */
function existsIn(path: string, tree: Tree): boolean {
  const plain = posix.normalize(path).replace(/\/$/, '');
  return tree.files.some((file) => matches(plain, file) || matches(`${plain}/**`, file));
}

/** `*` stands for anything within one name, `**` for anything. */
function matches(pattern: string, path: string): boolean {
  const source = pattern
    .split(/(\*\*|\*)/)
    .map((part) => (part === '**' ? '.*' : part === '*' ? '[^/]*' : part.replaceAll('.', '\\.')))
    .join('');
  return new RegExp(`^${source}$`).test(path);
}
