// Sentences live in packages/words alone, so that a further language is one more file there. This check looks for texts
// of three or more words in a row in the sources of every other package and app. Invented names and titles of the demo
// class are data, and the message of a RangeError speaks to a programmer: both are left alone.

import { isTest, isTypeScript, listFiles, readText } from './files.ts';
import type { SyntaxNode } from './syntax.ts';
import { lineOf, nameOf, parse, textOf, walk } from './syntax.ts';

const MAY_SPEAK = ['packages/words/', 'packages/demo/'];
const WORDS_OF_A_SENTENCE = 3;

/** Every sentence below `root` that stands outside words, as lines "file:line: the text". */
export function sentenceFaults(root: string): string[] {
  const sources = listFiles(root).filter(
    (path) =>
      /^(packages|apps)\//.test(path) &&
      isTypeScript(path) &&
      !isTest(path) &&
      !MAY_SPEAK.some((home) => path.startsWith(home)),
  );
  return sources.flatMap((path) => sentencesIn(path, readText(root, path)));
}

function sentencesIn(path: string, text: string): string[] {
  const found: string[] = [];
  walk(parse(path, text), (node) => {
    if (isProgrammersMistake(node)) return false;
    const said = textOf(node);
    if (said !== undefined && isSentence(said)) found.push(`${path}:${lineOf(text, node)}: ${JSON.stringify(said)}`);
    return true;
  });
  return found;
}

function isProgrammersMistake(node: SyntaxNode): boolean {
  return node.type === 'NewExpression' && nameOf(node['callee']) === 'RangeError';
}

/** Three words or more, counting letters with their punctuation; a value put in (`{}`) does not part them. */
function isSentence(text: string): boolean {
  let inARow = 0;
  for (const word of text.split(/\s+/).filter((part) => part !== '')) {
    if (/^["'(¿¡]?\p{L}+(['’]\p{L}+)?[.,:;!?)"']*$/u.test(word)) inARow += 1;
    else if (!word.includes('{}')) inARow = 0;
    if (inARow >= WORDS_OF_A_SENTENCE) return true;
  }
  return false;
}
