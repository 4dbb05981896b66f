// How much script the built app loads, in bytes after gzip as a web host sends it. Read from Vite's manifest.

import { readdirSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { SyntaxNode } from '../../tools/syntax.ts';
import { parse, textOf, walk } from '../../tools/syntax.ts';

interface Chunk {
  readonly file: string;
  readonly imports?: readonly string[];
  readonly dynamicImports?: readonly string[];
}

type Manifest = Readonly<Record<string, Chunk>>;

const FIRST = 'index.html';
const BUILD = 'src/screens/build/build.tsx';
const BOARD = 'src/screens/board/board.tsx';
/** Comes when the words of the first screen already stand. */
const DRAWING = 'src/screens/start/tower.tsx';
/** Read and written whenever a class is open, so it is there on every screen but Start. */
const CLASS_FILES = 'src/store/class-file.ts';

/** Drawing in space and what writes 3D models: where nothing is drawn in space it comes when a model is saved, and not before. */
const MODELS = 'src/models/saving.ts';

/** The door for photos comes when somebody goes through it. */
const TRACE = 'src/screens/trace/trace-door.tsx';

/** The graphs of the Board, with the library that draws them, come when somebody looks at them. */
const GRAPHS = 'src/screens/board/graphs/graphs-board.tsx';

/** A device loads one language. Both are nearly the same length; the longer one counts. */
const WORDS = '../../packages/words/src/';
const SCREEN_TEXTS = `${WORDS}es/screens/index.ts`;
/** Those of the Score card and the Board come with them. */
const CARD_TEXTS = `${WORDS}es/screens/cards.ts`;
/** Those of the graphs and of Fair points. */
const TALK_TEXTS = `${WORDS}es/talk/index.ts`;
const TRACE_TEXTS = [`${WORDS}es/trace.ts`, `${WORDS}trace.ts`];
const BUILD_TEXTS = [`${WORDS}es/index.ts`, `${WORDS}words.ts`];

/** Part -> bytes. Worked out from the folder of a build. */
export function sizesOf(folder: string): Readonly<Record<string, number>> {
  const manifest: Manifest = JSON.parse(readFileSync(join(folder, '.vite/manifest.json'), 'utf8'));
  const first = reached(manifest, [FIRST, SCREEN_TEXTS], false);
  const open = new Set([...first, ...reached(manifest, [CLASS_FILES, ...BUILD_TEXTS], false)]);
  const screen = (...sources: readonly string[]): number =>
    sum(folder, new Set([...open, ...reached(manifest, sources, true)]));
  return {
    'first screen': sum(folder, first),
    'first screen with its drawing': sum(folder, new Set([...first, ...reached(manifest, [DRAWING], true)])),
    Build: screen(BUILD),
    'Trace it, beside Build': screen(BUILD, TRACE, ...TRACE_TEXTS) - screen(BUILD),
    'Score card': screen('src/screens/score/score-card.tsx', CARD_TEXTS),
    Board: screen(BOARD, CARD_TEXTS),
    'graphs, beside the Board': screen(BOARD, GRAPHS, CARD_TEXTS, TALK_TEXTS) - screen(BOARD, CARD_TEXTS),
    'a 3D model': screen(MODELS) - sum(folder, open),
    'the worker that scores': sum(folder, workerOf(folder, 'engine-worker')),
    'the worker that prints': sum(folder, workerOf(folder, 'print-worker')),
    'the worker for photos': sum(folder, workerOf(folder, 'photo-worker')),
  };
}

/** The scripts reached from `sources`; `later`: also by what they import only when it is needed, but for 3D models, photos and graphs. */
function reached(manifest: Manifest, sources: readonly string[], later: boolean): ReadonlySet<string> {
  const seen = new Set<string>();
  const follow = (key: string): void => {
    const chunk = manifest[key];
    if (chunk === undefined) throw new RangeError(`the build has no ${key}`);
    if (seen.has(key)) return;
    seen.add(key);
    // What the first screen loads later are the other screens; texts are named by their sources, in one language.
    const more = later && key !== FIRST ? (chunk.dynamicImports ?? []).filter((next) => !isApart(next)) : [];
    for (const next of [...(chunk.imports ?? []), ...more]) follow(next);
  };
  for (const source of sources) follow(source);
  return new Set([...seen].map((key) => manifest[key]?.file ?? '').filter((file) => file.endsWith('.js')));
}

const isApart = (source: string): boolean => source.startsWith(WORDS) || [MODELS, TRACE, GRAPHS].includes(source);

/** A worker with what it imports at once; what it loads later (the large solver, words) is not in it. */
function workerOf(folder: string, name: string): ReadonlySet<string> {
  const seen = new Set<string>();
  const follow = (file: string): void => {
    if (seen.has(file)) return;
    seen.add(file);
    for (const next of importsAtOnce(file, readFileSync(join(folder, file), 'utf8'))) {
      follow(posix.join(posix.dirname(file), next));
    }
  };
  const workers = readdirSync(join(folder, 'assets')).filter(
    (file) => file.startsWith(`${name}-`) && file.endsWith('.js'),
  );
  if (workers.length !== 1) throw new RangeError(`the build has ${workers.length} of ${name}`);
  for (const worker of workers) follow(`assets/${worker}`);
  return seen;
}

const AT_ONCE = ['ImportDeclaration', 'ExportNamedDeclaration', 'ExportAllDeclaration'];

function importsAtOnce(file: string, text: string): string[] {
  const found: string[] = [];
  walk(parse(file, text), (node: SyntaxNode) => {
    const from = AT_ONCE.includes(node.type) ? textOf(node['source']) : undefined;
    if (from !== undefined) found.push(from);
    return node.type === 'Program' || AT_ONCE.includes(node.type);
  });
  return found;
}

const sum = (folder: string, files: ReadonlySet<string>): number =>
  [...files].reduce((bytes, file) => bytes + gzipSync(readFileSync(join(folder, file))).length, 0);
