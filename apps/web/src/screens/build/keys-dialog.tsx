// The keys of the Build screen, listed.

import { useRef } from 'preact/hooks';
import { useScreenWords } from '../../app/use-words.ts';
import { Dialog } from '../../parts/dialog.tsx';
import { Icon } from '../../parts/icon.tsx';
import { smallStepMm, TURN_DEGREES, usualStepMm } from './moves.ts';
import type { Shown } from './shown.ts';

export function KeysDialog({ words }: Shown) {
  const screen = useScreenWords();
  const dialog = useRef<HTMLDialogElement>(null);
  const length = words.inClass.exact(usualStepMm(words.ruler), 'mm');
  const small = words.inClass.exact(smallStepMm(words.ruler), 'mm');
  const [ctrl, shift] = [screen.say('key.ctrl'), screen.say('key.shift')];
  const rows: readonly (readonly [string, string])[] = [
    ['1 – 9', screen.say('keys.add')],
    ['N', screen.say('keys.next')],
    ['B', screen.say('keys.before')],
    [screen.say('key.arrows'), screen.say('keys.move', { length })],
    ['T', screen.say('keys.turn', { degrees: `${TURN_DEGREES}°` })],
    [shift, screen.say('keys.small', { length: small })],
    ['L', screen.say('keys.lay')],
    [`${screen.say('key.page-up')}, ${screen.say('key.page-down')}`, screen.say('keys.order')],
    ['D', screen.say('keys.copy')],
    [screen.say('key.delete'), screen.say('keys.take-off')],
    [`${ctrl} Z`, screen.say('keys.undo')],
    [`${ctrl} ${shift} Z`, screen.say('keys.redo')],
    ['C F S A', screen.say('keys.views')],
  ];
  return (
    <>
      <button type="button" className="btn" onClick={() => dialog.current?.showModal()}>
        <Icon name="keys" />
        <span>{screen.say('build.keys')}</span>
      </button>
      <Dialog dialog={dialog} title={screen.say('build.keys')}>
        <dl className="keys-panel">
          {rows.map(([key, what]) => (
            <div key={key} className="key-row">
              <dt>
                <kbd>{key}</kbd>
              </dt>
              <dd>{what}</dd>
            </div>
          ))}
        </dl>
        <p className="mut">{screen.say('keys.where')}</p>
      </Dialog>
    </>
  );
}
