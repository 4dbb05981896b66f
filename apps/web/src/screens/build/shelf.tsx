// The shelf: every kind of piece with its drawing, its sizes and how many are left. A tap puts one on top.

import { stockLeft } from '@cairnmark/editing';
import type { KindOfPiece } from '@cairnmark/engine';
import { kindsOf } from '@cairnmark/engine';
import { useScreenWords } from '../../app/use-words.ts';
import { SolidPicture } from '../../parts/solid-picture.tsx';
import { Help } from './help.tsx';
import type { Shown } from './shown.ts';
import { useNumbersPieces } from './use-numbers-pieces.ts';

export function Shelf({ at, words, editor, door, scale, setCarry, help }: Shown) {
  const screen = useScreenWords();
  const numbers = useNumbersPieces(at);
  const left = door === 'numbers' ? numbers.left : stockLeft(editor.pieces, editor.bench);
  const hint =
    door === 'numbers' ? 'build.shelf-hint-numbers' : door === 'lay' ? 'build.shelf-hint' : 'build.shelf-hint-tap';
  const sizes = kindsOf(at.challenge, at.group);
  const add = (kind: KindOfPiece): void => {
    if (door === 'numbers') numbers.add(kind.id);
    else editor.edit({ do: 'add', kind: kind.id });
  };
  return (
    <section className="shelf" aria-label={screen.say('build.shelf')}>
      <h2>{screen.say('build.shelf')}</h2>
      {help && <Help text="help.shelf" />}
      <ul>
        {at.challenge.kit.kinds.map((kind) => {
          // A piece that was crushed after it was built with leaves fewer than none.
          const count = Math.max(0, left.get(kind.id) ?? 0);
          const notEarned = kind.stock > 0 && editor.bench.stock.get(kind.id) === 0;
          const solid = editor.bench.solids.get(kind.id);
          return (
            <li key={kind.id}>
              <button
                type="button"
                className="kind"
                data-kind={kind.id}
                aria-disabled={count === 0}
                onClick={() => add(kind)}
                onPointerDown={({ clientX, clientY, currentTarget, pointerId, button, isPrimary }) => {
                  if (door !== 'lay' || button !== 0 || !isPrimary) return;
                  // A finger is bound to where it came down; let go, so that the scene can follow it.
                  if (currentTarget.hasPointerCapture(pointerId)) currentTarget.releasePointerCapture(pointerId);
                  setCarry({ kind: kind.id, from: [clientX, clientY], pointerId });
                }}
              >
                <span className="vh">{screen.say(door === 'numbers' ? 'build.add-number' : 'build.add')} </span>
                {solid !== undefined && <SolidPicture solid={solid} scale={scale} />}
                <span className="name">
                  {kind.name}
                  <small>
                    {count === 0
                      ? screen.say(notEarned ? 'build.not-earned' : 'build.all-used')
                      : words.inClass.sizes(sizes.get(kind.id) ?? kind.solid)}
                  </small>
                </span>
                <span className="left">
                  {count}
                  <small>{screen.say('build.left')}</small>
                </span>
              </button>
            </li>
          );
        })}
      </ul>
      <p className="mut hint">{screen.say(hint)}</p>
    </section>
  );
}
