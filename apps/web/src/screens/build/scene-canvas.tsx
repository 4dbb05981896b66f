// The drawing in space: shows the build, picks pieces by a tap, and in "Lay it out" drags them.

import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { useScreenWords } from '../../app/use-words.ts';
import type { ViewName } from '../../drawing/view.ts';
import { SceneView } from '../../scene/scene-view.ts';
import { drawsInSpace } from '../../scene/supported.ts';
import type { Dragging } from './drag-picture.ts';
import { pictureOf } from './drag-picture.ts';
import type { LineUp } from './scene.tsx';
import type { Shown } from './shown.ts';
import { StillScene } from './still-scene.tsx';
import { useSceneDrag } from './use-scene-drag.ts';
import { useStack } from './use-stack.ts';
import { useWhy } from './use-why.ts';

interface CanvasProps extends Shown {
  readonly view: ViewName;
  readonly lineUp: LineUp;
}

export function SceneCanvas(props: CanvasProps) {
  const [can, setCan] = useState(() => drawsInSpace());
  const screen = useScreenWords();
  const { editor, words, view } = props;
  const stack = useStack(editor.pieces, editor.bench);
  if (can) return <SpaceCanvas {...props} onLost={() => setCan(false)} />;
  return (
    <div className="drawing">
      <StillScene pieces={stack.pieces} view={view} unit={words.ruler.unit === 'in' ? 'in' : 'cm'} />
      <p className="no-space">
        <b>{screen.say('no-3d.title')}</b> {screen.say('no-3d.what')}
      </p>
    </div>
  );
}

function SpaceCanvas(props: CanvasProps & { readonly onLost: () => void }) {
  const { editor, words, view, onLost } = props;
  const screen = useScreenWords();
  const host = useRef<HTMLDivElement>(null);
  const [scene, setScene] = useState<SceneView | null>(null);
  const lost = useRef(onLost);
  lost.current = onLost;
  useEffect(() => {
    if (host.current === null) return;
    const made = new SceneView(host.current, {
      onDrawing: (isThere) => {
        if (!isThere) lost.current();
      },
    });
    setScene(made);
    return () => made.dispose();
  }, []);

  const stack = useStack(editor.pieces, editor.bench);
  const why = useWhy(props);
  const [dragging, setDragging] = useState<Dragging | null>(null);
  const handlers = useSceneDrag({ ...props, stack }, scene?.pointing ?? null, setDragging);
  const topMm = Math.max(0, ...stack.pieces.map((piece) => piece.topMm));
  const heightText = topMm > 0 ? words.inClass.amount('height', topMm, 0) : null;
  const unit = words.ruler.unit === 'in' ? 'in' : 'cm';
  const picture = useMemo(
    () => pictureOf({ stack, picked: editor.picked, dragging, why, unit, heightText }),
    [stack, editor.picked, dragging, why, unit, heightText],
  );
  const dropped = droppedPiece(editor.note);
  const shownNote = useRef(editor.note);
  useEffect(() => {
    const isNew = shownNote.current !== editor.note;
    shownNote.current = editor.note;
    scene?.show(picture, isNew ? dropped : null);
  }, [scene, picture, dropped, editor.note]);
  useEffect(() => scene?.setView(view), [scene, view]);
  useEffect(() => {
    if (scene === null) return;
    const makeRoom = (): void => scene.setInset(innerWidth >= WIDE_PX ? BUTTONS_RIGHT : BUTTONS_BELOW);
    makeRoom();
    window.addEventListener('resize', makeRoom);
    return () => window.removeEventListener('resize', makeRoom);
  }, [scene]);

  return (
    <div
      className="drawing"
      ref={host}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: keys act on the build while the drawing has the focus
      tabIndex={0}
      role="application"
      aria-label={screen.say('build.scene')}
      {...handlers}
    />
  );
}

/** px that the buttons on the drawing cover: at its right in wide windows, below it in narrow ones. */
const WIDE_PX = 1024;
const BUTTONS_RIGHT = { top: 36, right: 132, bottom: 12, left: 12 };
const BUTTONS_BELOW = { top: 36, right: 12, bottom: 64, left: 12 };

/** A piece that has just come to the build falls into its place. */
function droppedPiece(note: Shown['editor']['note']): number | null {
  if (note?.said !== 'done') return null;
  return ['add', 'add-at', 'copy', 'move-to'].includes(note.command.do) ? note.edited.piece : null;
}
