// What the checks read in a Markdown file: its fenced blocks, its code in running text and its links.

export interface Fence {
  /** What stands behind the opening fence: "sh", "text", "ts" or nothing. */
  readonly language: string;
  readonly body: string;
  /** Line, from 1, of the opening fence. */
  readonly line: number;
  /** True when nothing but blank lines parts it from the fence before. */
  readonly followsFence: boolean;
}

export interface Span {
  readonly text: string;
  readonly line: number;
}

export interface Markdown {
  readonly fences: readonly Fence[];
  /** Code between backticks, and the targets of links. */
  readonly spans: readonly Span[];
}

export function readMarkdown(text: string): Markdown {
  const fences: Fence[] = [];
  const spans: Span[] = [];
  let open: { language: string; lines: string[]; line: number } | undefined;
  let followsFence = false;
  for (const [k, line] of text.split('\n').entries()) {
    const fence = /^```(\w*)/.exec(line);
    if (fence !== null && open === undefined) {
      open = { language: fence[1] ?? '', lines: [], line: k + 1 };
    } else if (fence !== null && open !== undefined) {
      fences.push({ language: open.language, body: open.lines.join('\n'), line: open.line, followsFence });
      open = undefined;
      followsFence = true;
    } else if (open !== undefined) {
      open.lines.push(line);
    } else {
      if (line.trim() !== '') followsFence = false;
      for (const [, code, link] of line.matchAll(/`([^`]+)`|\]\(([^)\s]+)\)/g)) {
        spans.push({ text: code ?? link ?? '', line: k + 1 });
      }
    }
  }
  if (open !== undefined) throw new SyntaxError(`the fence opened on line ${open.line} is never closed`);
  return { fences, spans };
}
