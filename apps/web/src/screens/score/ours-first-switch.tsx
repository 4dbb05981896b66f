// The switch "Our own result first", with what it does now.

import { useId } from 'preact/hooks';
import { CardHelp } from '../../app/card-help.tsx';
import { useCard } from './card.ts';

export function OursFirstSwitch() {
  const { say, covering } = useCard();
  const { asks, on, usual, turn } = covering;
  const id = useId();
  if (!asks) return null;
  const now = say(on ? 'ours-first.on' : 'ours-first.off');
  return (
    <div className="card-ours-first">
      <button type="button" className="btn" aria-pressed={on} aria-describedby={id} onClick={() => turn(!on)}>
        {say('ours-first.switch')}
      </button>
      <p className="mut" id={id} role="status">
        {usual ? `${now} ${say('ours-first.usual')}` : now}
      </p>
      <CardHelp items={[['help.ours-first', say('ours-first.switch'), say('ours-first.look')]]} />
    </div>
  );
}
