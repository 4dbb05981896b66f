// The tools of one piece: move it by taps, turn it, lay it on another face, take it off; exact places in the fold.

import { useId } from 'preact/hooks';
import { useScreenWords } from '../../app/use-words.ts';
import { HelpList } from '../../parts/asked-help.tsx';
import type { IconName } from '../../parts/icon.tsx';
import { Icon } from '../../parts/icon.tsx';
import { ExactPlace } from './exact-place.tsx';
import { MOVES, TURN_DEGREES, usualStepMm } from './moves.ts';
import type { Shown } from './shown.ts';

export function PieceTools(props: Shown & { readonly piece: number }) {
  const { editor, words, piece } = props;
  const screen = useScreenWords();
  const note = useId();
  const stepMm = usualStepMm(words.ruler);
  const length = words.inClass.exact(stepMm, 'mm');
  const last = editor.pieces.length - 1;
  return (
    <div className="tools">
      <p id={note}>{screen.say('tool.step', { length, degrees: `${TURN_DEGREES}°` })}</p>
      {/* biome-ignore lint/a11y/useSemanticElements: a set of buttons, not of fields */}
      <div className="pad" role="group" aria-describedby={note}>
        {MOVES.map(({ name, icon, x, y }) => (
          <Tool
            key={name}
            icon={icon}
            text={screen.say(name)}
            act={() => editor.edit({ do: 'shift', pieces: [piece], xMm: x * stepMm, yMm: y * stepMm })}
          />
        ))}
        <Tool
          icon="turn-left"
          text={screen.say('tool.turn-left')}
          act={() => editor.edit({ do: 'turn-by', piece, degrees: TURN_DEGREES })}
        />
        <Tool
          icon="turn-right"
          text={screen.say('tool.turn-right')}
          act={() => editor.edit({ do: 'turn-by', piece, degrees: -TURN_DEGREES })}
        />
        <Tool icon="lay" text={screen.say('tool.lay')} act={() => editor.edit({ do: 'lay-next', piece })} />
        <Tool icon="take-off" text={screen.say('tool.take-off')} act={() => editor.edit({ do: 'take-off', piece })} />
        <Tool
          icon="up"
          text={screen.say('tool.up')}
          off={piece === last}
          act={() => editor.edit({ do: 'reorder', piece, to: piece + 1 })}
        />
        <Tool
          icon="down"
          text={screen.say('tool.down')}
          off={piece === 0}
          act={() => editor.edit({ do: 'reorder', piece, to: piece - 1 })}
        />
        <Tool icon="copy" text={screen.say('tool.copy')} act={() => editor.edit({ do: 'copy', piece })} />
      </div>
      <HelpList
        on={props.help}
        items={[
          ['help.move', ...MOVES.map(({ name }) => screen.say(name))],
          ['help.turn', screen.say('tool.turn-left'), screen.say('tool.turn-right')],
          ['help.lay-over', screen.say('tool.lay')],
          ['help.take-off', screen.say('tool.take-off')],
          ['help.order', screen.say('tool.up'), screen.say('tool.down')],
          ['help.copy', screen.say('tool.copy')],
          ['help.exact', screen.say('tool.exact')],
        ]}
      />
      <ExactPlace {...props} key={piece} />
    </div>
  );
}

function Tool({
  icon,
  text,
  act,
  off = false,
}: {
  readonly icon: IconName;
  readonly text: string;
  readonly act: () => void;
  readonly off?: boolean;
}) {
  return (
    <button type="button" className="tool" aria-disabled={off} onClick={() => !off && act()}>
      <Icon name={icon} />
      {text}
    </button>
  );
}
