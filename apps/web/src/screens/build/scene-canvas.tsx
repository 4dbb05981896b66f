// The drawing itself.

import { useScreenWords } from '../../app/use-words.ts';
import type { LineUp, ViewName } from './scene.tsx';
import type { Shown } from './shown.ts';
import { StillScene } from './still-scene.tsx';
import { useStack } from './use-stack.ts';

export function SceneCanvas({ editor, words, view }: Shown & { readonly view: ViewName; readonly lineUp: LineUp }) {
  const screen = useScreenWords();
  const stack = useStack(editor.pieces, editor.bench);
  return (
    <div className="drawing" role="img" aria-label={screen.say('build.scene')}>
      <StillScene pieces={stack.pieces} view={view} unit={words.ruler.unit === 'in' ? 'in' : 'cm'} />
    </div>
  );
}
