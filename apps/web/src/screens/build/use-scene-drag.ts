// Dragging in the scene: a piece of the build, or one from the shelf. A short touch picks; a longer way drags. The ghost
// shows where it will settle; letting go beside the table, or Escape, changes nothing.

import type { Drag, FromShelf, Spot } from '@cairnmark/editing';
import { dragOf } from '@cairnmark/editing';
import type { PlacedPiece } from '@cairnmark/geometry';
import { buildStack } from '@cairnmark/geometry';
import type { TargetedPointerEvent } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { SceneView } from '../../scene/scene-view.ts';
import type { Dragging } from './drag-picture.ts';
import type { LineUp } from './scene.tsx';
import type { Shown } from './shown.ts';

/** px. Fingers shake: a touch that moves less than this is a tap. */
const TAP_PX = 6;

interface Carried {
  readonly what: number | FromShelf;
  /** From the axis of the piece to where it was taken hold of, mm. */
  readonly grip: readonly [xMm: number, yMm: number];
  readonly from: readonly [clientX: number, clientY: number];
  readonly drag: Drag;
  readonly others: readonly PlacedPiece[];
  readonly moved: boolean;
  readonly spot: Spot | null;
}

interface DragProps extends Shown {
  readonly lineUp: LineUp;
}

export function useSceneDrag(props: DragProps, scene: SceneView | null, show: (dragging: Dragging | null) => void) {
  const now = useRef({ props, scene, show });
  now.current = { props, scene, show };
  const carried = useRef<Carried | null>(null);

  const take = (what: number | FromShelf, grip: Carried['grip'], from: Carried['from']): void => {
    const { editor } = now.current.props;
    const drag = dragOf(editor.pieces, what, editor.bench);
    const built = buildStack(drag.others, editor.bench.solids, editor.bench.slackMm);
    carried.current = { what, grip, from, drag, others: built.ok ? built.value.pieces : [], moved: false, spot: null };
  };
  const move = (clientX: number, clientY: number): void => {
    const held = carried.current;
    const { props: current, scene: view, show: tell } = now.current;
    if (held === null || view === null) return;
    if (!held.moved && Math.hypot(clientX - held.from[0], clientY - held.from[1]) < TAP_PX) return;
    const spot = spotUnder(view, clientX, clientY, held, current.lineUp);
    const settled = spot === null ? null : held.drag.at(spot);
    const ghost = settled?.ok ? settled.value : null;
    carried.current = { ...held, moved: true, spot: ghost === null ? null : spot };
    tell({ others: held.others, ghost, refused: false });
    current.preview(ghost?.pieces ?? null);
  };
  const drop = (): void => {
    const held = carried.current;
    const { props: current, show: tell } = now.current;
    carried.current = null;
    tell(null);
    current.preview(null);
    if (held === null || held.spot === null) return;
    const { spot, what } = held;
    if (typeof what === 'number') current.editor.edit({ do: 'move-to', piece: what, spot });
    else current.editor.edit({ do: 'add-at', ...what, spot });
  };
  const give = (): void => {
    carried.current = null;
    now.current.show(null);
    now.current.props.preview(null);
  };

  useShelfDrag(props, take, move, drop, give);
  return {
    onPointerDown: (event: TargetedPointerEvent<HTMLElement>) => {
      const hit = scene?.pick(event.clientX, event.clientY);
      const { editor, door } = props;
      if (hit === null || hit === undefined || hit.piece === null) {
        editor.pick(null);
        return;
      }
      editor.pick(hit.piece);
      const laid = editor.pieces[hit.piece];
      if (door !== 'lay' || laid === undefined) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      take(hit.piece, [hit.point[0] - laid.xMm, hit.point[1] - laid.yMm], [event.clientX, event.clientY]);
    },
    onPointerMove: (event: TargetedPointerEvent<HTMLElement>) => {
      if (carried.current !== null && typeof carried.current.what === 'number') move(event.clientX, event.clientY);
    },
    onPointerUp: () => {
      if (carried.current !== null && typeof carried.current.what === 'number') drop();
    },
    onPointerCancel: give,
  };
}

/** mm from the middle. Further out nobody means the table. */
const TABLE_MM = 1500;

/** The surface under the pointer; a piece that is taken hold of away from its axis keeps that distance. */
function spotUnder(view: SceneView, clientX: number, clientY: number, held: Carried, lineUp: LineUp): Spot | null {
  const hit = view.pick(clientX, clientY);
  if (hit === null || hit.point.some((at) => Math.abs(at) > TABLE_MM)) return null;
  const [x, y] = hit.point;
  return { xMm: x - held.grip[0], yMm: y - held.grip[1], surfaceMm: hit.surfaceMm, lineUp };
}

/** A piece from the shelf is followed all over the page until it is let go. */
function useShelfDrag(
  { carry, setCarry }: DragProps,
  take: (what: FromShelf, grip: Carried['grip'], from: Carried['from']) => void,
  move: (clientX: number, clientY: number) => void,
  drop: () => void,
  give: () => void,
): void {
  const steps = useRef({ take, move, drop, give });
  steps.current = { take, move, drop, give };
  useEffect(() => {
    if (carry === null) return;
    const ends = new AbortController();
    const { signal } = ends;
    const end = (how: () => void): void => {
      how();
      setCarry(null);
    };
    steps.current.take({ kind: carry.kind, resting: null }, [0, 0], carry.from);
    window.addEventListener('pointermove', ({ clientX, clientY }) => steps.current.move(clientX, clientY), { signal });
    window.addEventListener('pointerup', () => end(steps.current.drop), { signal });
    window.addEventListener('pointercancel', () => end(steps.current.give), { signal });
    window.addEventListener('keydown', ({ key }) => key === 'Escape' && end(steps.current.give), { signal });
    return () => ends.abort();
  }, [carry, setCarry]);
}
