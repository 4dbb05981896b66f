// What the last command came to, read out by screen readers; a refusal is shown to all.

import { useScreenWords } from '../../app/use-words.ts';
import type { Shown } from './shown.ts';

export function EditNoteLine(props: Shown) {
  const text = useNoteText(props);
  const { note } = props.editor;
  const shown = note !== null && (note.said === 'refused' || note.edited.earlier);
  return (
    <p className={shown ? 'edit-note' : 'edit-note vh'} aria-live="polite">
      {text}
    </p>
  );
}

function useNoteText({ at, editor: { note, pieces } }: Shown): string {
  const screen = useScreenWords();
  if (note === null) return '';
  if (note.said === 'refused') return screen.say(`edit.${note.why}`);
  const { command, edited } = note;
  const count = pieces.length;
  if (edited.earlier && edited.piece !== null) return screen.say('edit.earlier', { number: edited.piece + 1, count });
  const nameOf = (id: string): string => at.challenge.kit.kinds.find((kind) => kind.id === id)?.name ?? id;
  if (command.do === 'add' || command.do === 'add-at') {
    return screen.say('edit.added', { kind: nameOf(command.kind), count });
  }
  return '';
}
