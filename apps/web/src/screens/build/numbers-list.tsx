// The pieces used, kind by kind, with a stepper each; and the way from a drawing to bare numbers and back.

import { piecesUsed } from '@cairnmark/engine';
import { useScreenWords } from '../../app/use-words.ts';
import { SolidPicture } from '../../parts/solid-picture.tsx';
import { useSession } from '../../store/use-session.ts';
import type { Door } from './doors.tsx';
import { OnlyNumbers } from './only-numbers.tsx';
import type { Shown } from './shown.ts';
import { useNumbersPieces } from './use-numbers-pieces.ts';

export function NumbersList({ at, editor, scale, setDoor }: Shown & { readonly setDoor: (door: Door) => void }) {
  const screen = useScreenWords();
  const numbers = useNumbersPieces(at);
  const layOut = useSession((session) => session.layOut);
  const layout = at.attempt?.layout;
  const kinds = layout === undefined ? [] : piecesUsed(layout);
  if (layout !== undefined && layout.kind !== 'numbers-only' && kinds.length > 0) {
    return (
      <div className="note">
        <p>{screen.say('numbers.drawn')}</p>
        <button type="button" className="btn" onClick={() => layOut({ kind: 'numbers-only', pieces: kinds })}>
          {screen.say('numbers.forget')}
        </button>
      </div>
    );
  }
  return (
    <>
      <h2>{screen.say('numbers.pieces')}</h2>
      <ul className="steppers">
        {at.challenge.kit.kinds
          .filter(({ id }) => (numbers.used.get(id) ?? 0) > 0)
          .map(({ id, name }) => {
            const solid = editor.bench.solids.get(id);
            return (
              <li key={id}>
                {solid !== undefined && <SolidPicture solid={solid} scale={scale} />}
                <span>{name}</span>
                <span className="step">
                  <button type="button" onClick={() => numbers.remove(id)}>
                    <span aria-hidden="true">−</span>
                    <span className="vh">{screen.say('numbers.fewer', { kind: name })}</span>
                  </button>
                  <output>{numbers.used.get(id)}</output>
                  <button
                    type="button"
                    aria-disabled={(numbers.left.get(id) ?? 0) <= 0}
                    onClick={() => numbers.add(id)}
                  >
                    <span aria-hidden="true">+</span>
                    <span className="vh">{screen.say('numbers.more', { kind: name })}</span>
                  </button>
                </span>
              </li>
            );
          })}
      </ul>
      <OnlyNumbers at={at} editor={editor} done={() => setDoor('stack')} />
    </>
  );
}
