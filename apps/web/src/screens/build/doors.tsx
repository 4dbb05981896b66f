// The doors to a build: typed numbers, a list, a scene, photos.

import { useScreenWords } from '../../app/use-words.ts';
import { Icon } from '../../parts/icon.tsx';

export type Door = 'numbers' | 'stack' | 'lay' | 'trace';

const DOORS = [
  { id: 'numbers', text: 'door.numbers', icon: 'numbers' },
  { id: 'stack', text: 'door.stack', icon: 'stack' },
  { id: 'lay', text: 'door.lay', icon: 'layout' },
  { id: 'trace', text: 'door.trace', icon: 'camera' },
] as const;

export function Doors({ door, setDoor }: { readonly door: Door; readonly setDoor: (door: Door) => void }) {
  const words = useScreenWords();
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as one bar in every browser
    <div className="seg" role="group" aria-label={words.say('build.doors')}>
      {DOORS.map(({ id, text, icon }) => (
        <button key={id} type="button" aria-pressed={id === door} onClick={() => setDoor(id)}>
          <Icon name={icon} />
          {words.say(text)}
        </button>
      ))}
    </div>
  );
}
