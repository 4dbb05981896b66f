// The app as one HTML file that opens from a USB stick: a page from there may load nothing beside itself, no script and no
// worker either, so everything stands in the page. Works on the finished build; whatever it could not put in fails it.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin, Rolldown } from 'vite';

export const ONE_FILE = 'cairnmark.html';

type Bundle = Rolldown.OutputBundle;

/** `icon`: the file in the public folder that the page has as its icon. */
export function oneFile(icon: string): Plugin {
  const folder = { path: '' };
  return {
    name: 'cairnmark:one-file',
    enforce: 'post',
    config: () => ({
      // Without a folder beside the page: no file is copied, and nothing is too large to be put in.
      publicDir: false,
      build: {
        assetsInlineLimit: Number.MAX_SAFE_INTEGER,
        cssCodeSplit: false,
        manifest: false,
        modulePreload: false,
        sourcemap: false,
        rolldownOptions: { output: { codeSplitting: false } },
      },
      worker: { format: 'iife', rolldownOptions: { output: { codeSplitting: false } } },
    }),
    configResolved: ({ root }) => {
      folder.path = join(root, 'public');
    },
    resolveId: {
      order: 'pre',
      filter: { id: /\?worker$/ },
      handler(id, importer) {
        return this.resolve(`${id}&inline`, importer);
      },
    },
    generateBundle: {
      order: 'post',
      handler(_, bundle) {
        const page = bundle['index.html'];
        if (page?.type !== 'asset') throw new RangeError('the build has no page');
        const taken = new Set([page.fileName]);
        const take = (file: string): string => {
          taken.add(file);
          return textOf(bundle, file);
        };
        page.source = withAllInside(String(page.source), take, readFileSync(join(folder.path, icon), 'utf8'));
        const left = Object.keys(bundle).filter((file) => !taken.has(file));
        if (left.length > 0) throw new RangeError(`not inside the one file: ${left.join(', ')}`);
        for (const file of taken) if (file !== page.fileName) delete bundle[file];
        page.fileName = ONE_FILE;
      },
    },
  };
}

/** Every address in the head gives way to what stands there. `take`: the text of a built file. */
export function withAllInside(html: string, take: (file: string) => string, icon: string): string {
  return html
    .replace(/<script type="module"[^>]* src="\.\/([^"]+)"><\/script>/g, (_, file: string) => {
      return `<script type="module">${scriptInside(take(file))}</script>`;
    })
    .replace(/<link rel="stylesheet"[^>]* href="\.\/([^"]+)">/g, (_, file: string) => {
      return `<style>${take(file).replaceAll('</style', '<\\/style')}</style>`;
    })
    .replace(/(<link rel="icon" href=")[^"]+/, (_, before: string) => {
      return `${before}data:image/svg+xml;base64,${Buffer.from(icon).toString('base64')}`;
    })
    .replace(/\s*<link rel="(manifest|apple-touch-icon)"[^>]*>/g, '');
}

/** What would end the script element, or begin a comment in it, written otherwise; it can only stand in a text or a pattern. */
const scriptInside = (script: string): string =>
  script
    .trimEnd()
    .replaceAll('<!--', '\\x3C!--')
    .replace(/<(?=\/?script)/gi, '\\x3C');

function textOf(bundle: Bundle, file: string): string {
  const part = bundle[file];
  if (part === undefined) throw new RangeError(`the build has no ${file}`);
  return part.type === 'chunk' ? part.code : Buffer.from(part.source).toString('utf8');
}
