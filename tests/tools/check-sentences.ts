// Sentences live in packages/words alone, so that a further language is one more file there. This check looks for texts
// of three or more words in a row in the sources of every other package and app, and in the markup of a page for any word
// that is shown or read out, a unit included. Invented names and titles of the demo class are data, and the message of a
// RangeError speaks to a programmer: both are left alone.

import { isTest, isTypeScript, listFiles, readText } from './files.ts';
import type { SyntaxNode } from './syntax.ts';
import { isNode, lineOf, nameOf, parse, textOf, walk } from './syntax.ts';

const MAY_SPEAK = ['packages/words/', 'packages/demo/'];
const WORDS_OF_A_SENTENCE = 3;

/** What a browser shows of an element besides its content, and what it reads out. */
const SPOKEN = [
  'alt',
  'aria-description',
  'aria-label',
  'aria-roledescription',
  'aria-valuetext',
  'placeholder',
  'title',
];

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
    if (isProgrammersMistake(node) || isClassName(node)) return false;
    const said = textOf(node);
    const shown = shownBy(node).filter((one) => isWord(one) && !isSentence(one));
    for (const one of said !== undefined && isSentence(said) ? [said, ...shown] : shown) {
      found.push(`${path}:${lineOf(text, node)}: ${JSON.stringify(one.trim())}`);
    }
    return true;
  });
  return found;
}

/** Texts that stand in the markup itself: between tags, as `{'text'}` between them, in attributes that are read out. */
function shownBy(node: SyntaxNode): string[] {
  if (node.type === 'JSXAttribute') {
    return SPOKEN.includes(attributeName(node)) ? [textOf(inBraces(node['value'])) ?? ''] : [];
  }
  if (!['JSXElement', 'JSXFragment'].includes(node.type) || !Array.isArray(node['children'])) return [];
  return node['children'].map((child: unknown) => textOf(inBraces(child)) ?? '');
}

function attributeName({ name }: SyntaxNode): string {
  return isNode(name) && typeof name['name'] === 'string' ? name['name'] : '';
}

const inBraces = (node: unknown): unknown =>
  isNode(node) && node.type === 'JSXExpressionContainer' ? node['expression'] : node;

/** Letters, besides those of an entity such as `&nbsp;`. */
const isWord = (text: string): boolean => /\p{L}/u.test(text.replace(/&\w+;/g, ''));

function isProgrammersMistake(node: SyntaxNode): boolean {
  return node.type === 'NewExpression' && nameOf(node['callee']) === 'RangeError';
}

const isClassName = (node: SyntaxNode): boolean => node.type === 'JSXAttribute' && attributeName(node) === 'className';

/**
 * Three words or more, counting letters with their punctuation; a value put in (`{}`) does not part them. Single letters
 * alone are keys.
 */
function isSentence(text: string): boolean {
  if (!/\p{L}{2}/u.test(text)) return false;
  let inARow = 0;
  for (const word of text.split(/\s+/).filter((part) => part !== '')) {
    if (/^["'(¿¡]?\p{L}+(['’]\p{L}+)?[.,:;!?)"']*$/u.test(word)) inARow += 1;
    else if (!word.includes('{}')) inARow = 0;
    if (inARow >= WORDS_OF_A_SENTENCE) return true;
  }
  return false;
}
