// What a TypeScript file imports, in every way it can be written: import, export from, import(), import types.

import type { SyntaxNode } from './syntax.ts';
import { lineOf, parse, textOf, walk } from './syntax.ts';

export interface Import {
  /** As written: './vec.ts', '@cairnmark/geometry', 'zod'. */
  readonly from: string;
  /** True when nothing of it is left once types are taken away. */
  readonly typesOnly: boolean;
  readonly line: number;
}

const IMPORTING = [
  'ImportDeclaration',
  'ExportNamedDeclaration',
  'ExportAllDeclaration',
  'ImportExpression',
  'TSImportType',
];

export function importsOf(path: string, text: string): Import[] {
  const found: Import[] = [];
  walk(parse(path, text), (node) => {
    const from = IMPORTING.includes(node.type) ? textOf(node['source']) : undefined;
    if (from !== undefined) found.push({ from, typesOnly: isTypesOnly(node), line: lineOf(text, node) });
    return true;
  });
  return found;
}

function isTypesOnly(node: SyntaxNode): boolean {
  return node.type === 'TSImportType' || node['importKind'] === 'type' || node['exportKind'] === 'type';
}
