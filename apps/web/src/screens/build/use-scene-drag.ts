// Taps and drags on the drawing. A tap picks; in "Lay it out" a longer way drags the piece, and one from the shelf comes in.

import type { FromShelf } from '@cairnmark/editing';
import type { Stack } from '@cairnmark/geometry';
import type { TargetedMouseEvent, TargetedPointerEvent } from 'preact';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { useScreenWords } from '../../app/use-words.ts';
import type { Pointing } from '../../scene/pointing.ts';
import type { Dragging } from './drag-picture.ts';
import type { Refusal } from './drag-refusal.ts';
import { followPointer } from './follow-pointer.ts';
import type { Grip } from './hand-place.ts';
import type { LineUp } from './scene.tsx';
import type { DragScene, Place } from './scene-drag.ts';
import { createSceneDrag } from './scene-drag.ts';
import type { Shown } from './shown.ts';

interface DragProps extends Shown {
  readonly lineUp: LineUp;
  readonly stack: Stack;
}

export function useSceneDrag(props: DragProps, sight: Pointing | null, show: (dragging: Dragging | null) => void) {
  const { editor, door, stack, carry } = props;
  const follow = useFollowed(props, sight, show);

  // A piece from the shelf is held in its middle, and comes to the depth of the piece laid last where one looks level.
  const last = useRef(editor.pieces.at(-1));
  last.current = editor.pieces.at(-1);
  // At once: a finger may be up again before the next frame.
  useLayoutEffect(() => {
    if (carry === null) return;
    const grip: Grip = { by: [0, 0, 0], through: [last.current?.xMm ?? 0, last.current?.yMm ?? 0, 0] };
    follow({ kind: carry.kind, resting: null }, grip, carry.from, carry.pointerId);
  }, [follow, carry]);

  return {
    onPointerDown: (event: TargetedPointerEvent<HTMLElement>) => {
      if (door !== 'lay' || event.button !== 0 || !event.isPrimary) return;
      const hit = sight?.pick(event.clientX, event.clientY) ?? null;
      const taken = stack.pieces.find(({ index }) => index === hit?.piece);
      if (hit === null || taken === undefined) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      const [x, y, z] = hit.point;
      const grip: Grip = { by: [x - taken.shift[0], y - taken.shift[1], z - taken.bottomMm], through: hit.point };
      follow(taken.index, grip, [event.clientX, event.clientY], event.pointerId);
    },
    onClick: ({ clientX, clientY }: TargetedMouseEvent<HTMLElement>) => {
      editor.pick(sight?.pick(clientX, clientY)?.piece ?? null);
    },
  };
}

type Follow = (what: number | FromShelf, grip: Grip, from: Place, pointerId: number) => void;

/** Takes up a piece and drags it along with a pointer until that is let go, or the build is another. */
function useFollowed(
  { editor, door, setCarry, preview, lineUp }: DragProps,
  sight: Pointing | null,
  show: (dragging: Dragging | null) => void,
): Follow {
  const screen = useScreenWords();
  const scene = {
    editor,
    sight,
    lineUp,
    show,
    preview,
    label: (why: Refusal) => screen.say(`drag.${why}`),
  } satisfies DragScene;
  const now = useRef(scene);
  now.current = scene;
  const [{ drag, follow, leave }] = useState(() => {
    const drag = createSceneDrag(() => now.current);
    let unfollow = (): void => {};
    const over = (wasDrag: boolean): boolean => {
      setCarry(null);
      return wasDrag;
    };
    const leave = (): void => {
      unfollow();
      over(drag.give());
    };
    const follow: Follow = (what, grip, from, pointerId) => {
      leave();
      drag.take(what, grip, from);
      const { move } = drag;
      unfollow = followPointer(pointerId, { move, drop: () => over(drag.drop()), give: () => over(drag.give()) });
    };
    return { drag, follow, leave };
  });
  // Keys, undo, another group or another door: what is dragged belongs to a build that is shown no more.
  useEffect(() => {
    if (!drag.isOf(editor.pieces) || door !== 'lay') leave();
  }, [drag, leave, editor.pieces, door]);
  useEffect(() => leave, [leave]);
  return follow;
}
