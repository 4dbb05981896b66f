// The way to the door "Trace it", which comes with its own scripts when it is opened.

import { Arriving } from '../../app/arriving.tsx';
import type { Keep } from '../trace/use-tracing.ts';
import type { Door } from './doors.tsx';
import type { Shown } from './shown.ts';

export function Traced({
  setDoor,
  keep,
  ...shown
}: Shown & { readonly setDoor: (door: Door) => void; readonly keep: Keep }) {
  return (
    <Arriving ask={doorAsked}>
      {({ default: TraceDoor }) => (
        <TraceDoor {...shown} bench={shown.editor.bench} keep={keep} done={() => setDoor('lay')} />
      )}
    </Arriving>
  );
}

const doorAsked = () => import('../trace/trace-door.tsx');
