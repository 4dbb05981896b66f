// The way of one piece through the scene, from where it is taken to where it is let go. The ghost shows where it will
// settle, or that it may not be put there and why; then letting go changes nothing.

import type { Drag, FromShelf, Pieces, Spot } from '@cairnmark/editing';
import { dragOf, hoverAt } from '@cairnmark/editing';
import type { PlacedPiece } from '@cairnmark/geometry';
import { buildStack } from '@cairnmark/geometry';
import type { Dragging } from './drag-picture.ts';
import type { Refusal } from './drag-refusal.ts';
import { refusalOf } from './drag-refusal.ts';
import type { Grip, Sight } from './hand-place.ts';
import { handPlace } from './hand-place.ts';
import type { Editor } from './use-editor.ts';

export type Place = readonly [clientX: number, clientY: number];

/** What the drag acts on, as it is now. */
export interface DragScene {
  readonly editor: Pick<Editor, 'pieces' | 'bench' | 'pick' | 'hush' | 'edit' | 'refuse'>;
  readonly sight: Sight | null;
  readonly lineUp: Spot['lineUp'];
  readonly show: (dragging: Dragging | null) => void;
  readonly preview: (pieces: Pieces | null) => void;
  readonly label: (why: Refusal) => string;
}

export interface SceneDrag {
  take(what: number | FromShelf, grip: Grip, from: Place): void;
  move(at: Place): void;
  /** Lets it go. True when it had been moved. */
  drop(): boolean;
  /** Leaves all as it was. True when it had been moved. */
  give(): boolean;
  /** The build is another: a drag that began before means nothing any more. */
  isOf(pieces: Pieces): boolean;
}

export function createSceneDrag(now: () => DragScene): SceneDrag {
  let carried: Carried | null = null;
  const give = (): boolean => {
    const isDrag = carried?.moved === true;
    carried = null;
    now().show(null);
    now().preview(null);
    return isDrag;
  };
  return {
    take: (what, grip, from) => {
      carried = takenUp(now().editor, what, grip, from);
    },
    move: (at) => {
      const scene = now();
      if (carried === null || scene.sight === null) return;
      if (!carried.moved) {
        if (Math.hypot(at[0] - carried.from[0], at[1] - carried.from[1]) < TAP_PX) return;
        if (typeof carried.what === 'number') scene.editor.pick(carried.what);
        scene.editor.hush();
      }
      carried = moved(carried, at, scene.sight, scene);
    },
    drop: () => {
      const held = carried;
      const isDrag = give();
      if (held !== null) letGo(held, now().editor);
      return isDrag;
    },
    give,
    isOf: (pieces) => carried === null || carried.pieces === pieces,
  };
}

/** px. Fingers shake: a touch that moves less than this is a tap. */
const TAP_PX = 6;

interface Carried {
  readonly what: number | FromShelf;
  readonly pieces: Pieces;
  readonly grip: Grip;
  readonly from: Place;
  readonly drag: Drag;
  readonly others: readonly PlacedPiece[];
  readonly moved: boolean;
  /** Whether it has been over the scene: a piece from the shelf is on its way there first. */
  readonly entered: boolean;
  /** What comes of letting it go: its new place, or why it has none; null: nothing. */
  readonly end: { readonly spot: Spot } | { readonly refused: Refusal } | null;
}

function takenUp({ pieces, bench }: DragScene['editor'], what: number | FromShelf, grip: Grip, from: Place): Carried {
  const drag = dragOf(pieces, what, bench);
  const built = buildStack(drag.others, bench.solids, bench.slackMm);
  const others = built.ok ? built.value.pieces : [];
  return { what, pieces, grip, from, drag, others, moved: false, entered: typeof what === 'number', end: null };
}

function moved(held: Carried, at: Place, sight: Sight, { editor, lineUp, show, preview, label }: DragScene): Carried {
  const { what, pieces, grip, drag, others } = held;
  const { isOnTable, ...place } = handPlace(sight, at, grip, others);
  const spot: Spot = { ...place, lineUp };
  const settled = isOnTable ? drag.at(spot) : null;
  const entered = held.entered || isOnTable;
  if (settled?.ok) {
    show({ others, ghost: { piece: settled.value.placed, isRefused: false, label: null } });
    preview(settled.value.pieces);
    return { ...held, moved: true, entered, end: { spot } };
  }
  const refused = settled === null ? 'off-table' : refusalOf(settled.issues);
  const piece = entered ? hoverAt(pieces, what, place, editor.bench) : null;
  show({ others, ghost: piece === null ? null : { piece, isRefused: true, label: label(refused) } });
  preview(null);
  return { ...held, moved: true, entered, end: entered ? { refused } : null };
}

function letGo({ what, end }: Carried, editor: DragScene['editor']): void {
  if (end === null) return;
  if ('refused' in end) editor.refuse(end.refused);
  else if (typeof what === 'number') editor.edit({ do: 'move-to', piece: what, spot: end.spot });
  else editor.edit({ do: 'add-at', ...what, spot: end.spot });
}
