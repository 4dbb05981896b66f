// The keys of the Build screen. They act only while the list or the drawing has the focus, so that text fields and the
// keys of a screen reader are safe.

import type { Command } from '@cairnmark/editing';
import { MOVES, smallStepMm, TURN_DEGREES, usualStepMm } from './moves.ts';
import type { Shown } from './shown.ts';

/** What a key asks for; null: nothing of ours. */
export type KeyAction =
  | { readonly do: 'command'; readonly command: Command }
  | { readonly do: 'pick'; readonly piece: number }
  | { readonly do: 'undo' }
  | { readonly do: 'redo' };

export interface KeyScene {
  readonly kinds: readonly string[];
  readonly count: number;
  readonly picked: number | null;
  readonly stepMm: number;
  readonly smallStepMm: number;
}

export interface Key {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly ctrlKey: boolean;
}

export function useBuildKeys({ at, editor, words }: Shown): (event: KeyboardEvent) => void {
  return (event) => {
    if (!isForBuild(event)) return;
    const ctrlKey = event.ctrlKey || event.metaKey;
    const action = actionOf(
      { key: event.key, shiftKey: event.shiftKey, ctrlKey },
      {
        kinds: at.challenge.kit.kinds.map(({ id }) => id),
        count: editor.pieces.length,
        picked: editor.picked,
        stepMm: usualStepMm(words.ruler),
        smallStepMm: smallStepMm(words.ruler),
      },
    );
    if (action === null) return;
    event.preventDefault();
    if (action.do === 'command') editor.edit(action.command);
    else if (action.do === 'pick') editor.pick(action.piece);
    else editor[action.do]();
  };
}

export function actionOf({ key, shiftKey, ctrlKey }: Key, scene: KeyScene): KeyAction | null {
  const letter = key.toLowerCase();
  if (ctrlKey) return letter === 'z' ? { do: shiftKey ? 'redo' : 'undo' } : letter === 'y' ? { do: 'redo' } : null;
  const kind = /^[1-9]$/.test(key) ? scene.kinds[Number(key) - 1] : undefined;
  if (kind !== undefined) return { do: 'command', command: { do: 'add', kind } };
  const { picked, count } = scene;
  if (letter === 'n' && count > 0) return { do: 'pick', piece: picked === null ? 0 : (picked + 1) % count };
  if (letter === 'b' && count > 0) return { do: 'pick', piece: ((picked ?? 0) + count - 1) % count };
  return picked === null ? null : pieceAction(key, shiftKey, picked, scene);
}

function pieceAction(key: string, shiftKey: boolean, piece: number, scene: KeyScene): KeyAction | null {
  const command = (one: Command): KeyAction => ({ do: 'command', command: one });
  const move = MOVES.find((one) => one.key === key);
  const stepMm = shiftKey ? scene.smallStepMm : scene.stepMm;
  if (move !== undefined) return command({ do: 'shift', pieces: [piece], xMm: move.x * stepMm, yMm: move.y * stepMm });
  switch (key.toLowerCase()) {
    case 't':
      return command({ do: 'turn-by', piece, degrees: shiftKey ? 1 : TURN_DEGREES });
    case 'l':
      return command({ do: 'lay-next', piece });
    case 'd':
      return command({ do: 'copy', piece });
    case 'pageup':
      return piece + 1 < scene.count ? command({ do: 'reorder', piece, to: piece + 1 }) : null;
    case 'pagedown':
      return piece > 0 ? command({ do: 'reorder', piece, to: piece - 1 }) : null;
    case 'delete':
    case 'backspace':
      return command({ do: 'take-off', piece });
    default:
      return null;
  }
}

/** Letters typed into a field, chosen from a list or pressed in a dialog over the build mean something else there. */
export const isForBuild = ({ defaultPrevented, altKey, target }: KeyboardEvent): boolean =>
  !defaultPrevented && !altKey && !(target instanceof Element && target.closest(KEEPS_ITS_KEYS) !== null);

const KEEPS_ITS_KEYS = ['dialog', 'input', 'select', 'textarea'].join();
