// Of a build of which only numbers were typed there is no list: how to get one.

import { useScreenWords } from '../../app/use-words.ts';
import { useSession } from '../../store/use-session.ts';
import type { Shown } from './shown.ts';
import { stacked } from './stacked.ts';

interface OnlyNumbersProps extends Pick<Shown, 'at' | 'editor'> {
  readonly done?: () => void;
}

export function OnlyNumbers({ at, editor, done }: OnlyNumbersProps) {
  const screen = useScreenWords();
  const layOut = useSession((session) => session.layOut);
  const layout = at.attempt?.layout;
  if (layout?.kind !== 'numbers-only' || layout.pieces.length === 0) return null;
  const draw = (): void => {
    layOut({ kind: 'laid-out', pieces: stacked(layout.pieces, editor.bench) });
    done?.();
  };
  return (
    <div className="note">
      <p>{screen.say('numbers.only')}</p>
      <button type="button" className="btn" onClick={draw}>
        {screen.say('numbers.draw')}
      </button>
    </div>
  );
}
