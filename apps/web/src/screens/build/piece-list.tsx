// The pieces from the top down, as in the tower; the tools of the picked piece open under its row.

import { useScreenWords } from '../../app/use-words.ts';
import { HelpList } from '../../parts/asked-help.tsx';
import { pieceHeight } from '../../parts/piece-height.ts';
import { SolidPicture } from '../../parts/solid-picture.tsx';
import { BuildInWords } from './build-in-words.tsx';
import { EditNoteLine } from './edit-note-line.tsx';
import { Help } from './help.tsx';
import { OnlyNumbers } from './only-numbers.tsx';
import { PieceTools } from './piece-tools.tsx';
import type { Shown } from './shown.ts';
import { useBuildKeys } from './use-build-keys.ts';
import { useFocusKept } from './use-focus-kept.ts';

export function PieceList(props: Shown) {
  const { at, words, editor, worked, door, scale, help, dragging } = props;
  const screen = useScreenWords();
  const keys = useBuildKeys(props);
  const list = useFocusKept(editor.pieces.length);
  const { pieces, picked } = editor;
  if (door === 'numbers') return <section className="list" />;
  // The report of a drag counts the pieces as they would be then.
  const stability = dragging ? null : worked.value?.stability;
  const falling = new Set(stability?.stands === false ? stability.first.flatMap((failure) => failure.pieces) : []);
  return (
    <section className="list" ref={list} tabIndex={-1} aria-label={screen.say('build.list')} onKeyDown={keys}>
      <div className="list-head">
        <h2>{screen.say('build.list')}</h2>
        <span className="mut">{words.words.counted('pieces', pieces.length)}</span>
      </div>
      {help && <Help text="help.list" />}
      <OnlyNumbers {...props} />
      <EditNoteLine {...props} />
      <ol reversed>
        {pieces
          .map((piece, k) => {
            const kind = at.challenge.kit.kinds.find(({ id }) => id === piece.kind);
            const solid = editor.bench.solids.get(piece.kind);
            const open = k === picked;
            return (
              <li key={k} className={rowClass(open, falling.has(k))}>
                <button
                  type="button"
                  className="row"
                  data-piece={k}
                  aria-expanded={open}
                  onClick={() => editor.pick(open ? null : k)}
                >
                  <b>{k + 1}</b>
                  {solid !== undefined && <SolidPicture solid={solid} resting={piece.resting} scale={scale} />}
                  <span className="name">{kind?.name ?? piece.kind}</span>
                  <span className="mut">{heightText(solid, piece.resting, words)}</span>
                </button>
                {open && <PieceTools {...props} piece={k} />}
              </li>
            );
          })
          .reverse()}
      </ol>
      <p className="on-table mut">{screen.say('build.table')}</p>
      {pieces.length > 0 && <HelpList on={help} items={[['help.in-words', screen.say('back.title')]]} />}
      {pieces.length > 0 && <BuildInWords {...props} />}
    </section>
  );
}

const rowClass = (open: boolean, falls: boolean): string | undefined =>
  [open && 'picked', falls && 'falls'].filter(Boolean).join(' ') || undefined;

/** How tall the piece is as it lies. */
function heightText(
  solid: { readonly restings: readonly { readonly id: string; readonly heightMm: number }[] } | undefined,
  resting: string,
  words: Shown['words'],
): string {
  const heightMm = solid?.restings.find(({ id }) => id === resting)?.heightMm;
  return heightMm === undefined ? '' : pieceHeight(heightMm, words);
}
