// A TypeScript file as a tree, for the checks that read code. The parser is the one that Vite brings.

import { parseSync } from 'vite';

/** A node of the syntax tree (ESTree, with TypeScript's own nodes beside it). */
export interface SyntaxNode {
  readonly type: string;
  readonly start: number;
  readonly [field: string]: unknown;
}

/** The tree of a file. Throws SyntaxError when the text does not parse: no check could then be trusted. */
export function parse(path: string, text: string): SyntaxNode {
  const { program, errors } = parseSync(path, text);
  const [first] = errors;
  if (first !== undefined) throw new SyntaxError(`${path}: ${first.message}`);
  if (!isNode(program)) throw new SyntaxError(`${path}: the parser gave no tree`);
  return program;
}

/** Visits `node` and all below it, parents first. `visit` answers false where nothing below is wanted. */
export function walk(node: SyntaxNode, visit: (node: SyntaxNode) => boolean): void {
  if (!visit(node)) return;
  for (const value of Object.values(node)) {
    for (const child of Array.isArray(value) ? value : [value]) if (isNode(child)) walk(child, visit);
  }
}

export function isNode(value: unknown): value is SyntaxNode {
  return typeof value === 'object' && value !== null && 'type' in value && 'start' in value;
}

/** The name, when `node` is an identifier. */
export function nameOf(node: unknown): string | undefined {
  return isNode(node) && node.type === 'Identifier' && typeof node['name'] === 'string' ? node['name'] : undefined;
}

/** What a text in the code says: a string, or a template with `{}` in place of each value. Undefined for other nodes. */
export function textOf(node: unknown): string | undefined {
  if (!isNode(node)) return undefined;
  if (node.type === 'Literal') return typeof node['value'] === 'string' ? node['value'] : undefined;
  if (node.type === 'JSXText') return typeof node['value'] === 'string' ? node['value'] : undefined;
  if (node.type !== 'TemplateLiteral' || !Array.isArray(node['quasis'])) return undefined;
  return node['quasis'].map((quasi: { value: { cooked: string | null } }) => quasi.value.cooked ?? '').join('{}');
}

/** The line, from 1, on which a node starts. */
export function lineOf(text: string, node: SyntaxNode): number {
  return text.slice(0, node.start).split('\n').length;
}
