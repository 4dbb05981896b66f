// Exact places for one piece: on or beside another, so far from its middle, so much turned, on which face, held how.

import type { Bench, Pieces, Side } from '@cairnmark/editing';
import { degreesOf, offsetFrom, readBack } from '@cairnmark/editing';
import { LENGTH_MM_MOST } from '@cairnmark/engine';
import type { Hold } from '@cairnmark/geometry';
import { useState } from 'preact/hooks';
import { useScreenWords } from '../../app/use-words.ts';
import { Choice } from '../../parts/choice.tsx';
import { LengthField } from '../../parts/length-field.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { PieceSelect } from './piece-select.tsx';
import type { Shown } from './shown.ts';

const SIDES: readonly Side[] = ['left', 'right', 'back', 'front'];
const FULL_TURN_RAD = 2 * Math.PI;
const HOLDS = ['free', 'taped', 'glued', 'leaning', 'nested'] as const;

export function ExactPlace({ at, editor, words, worked, piece, ...rest }: Shown & { readonly piece: number }) {
  const screen = useScreenWords();
  const { pieces, bench } = editor;
  const laid = pieces[piece];
  const [reference, setReference] = useState<number | 'table'>(() => mainSupport(pieces, piece, bench));
  const [side, setSide] = useState<Side>('right');
  const of = typeof reference === 'number' && reference < pieces.length && reference !== piece ? reference : 'table';
  if (laid === undefined) return null;
  const offset = offsetFrom(laid, of === 'table' ? undefined : pieces[of]);
  const solid = bench.solids.get(laid.kind);
  const others = { at, editor, words, worked, ...rest, piece };
  const restingNames: Readonly<Record<string, string>> = words.words.names.restings;
  return (
    <details className="exact" open={rest.door === 'stack'}>
      <summary>{screen.say('tool.exact')}</summary>
      <PieceSelect {...others} label={screen.say('tool.measured-from')} value={of} choose={setReference} />
      <div className="row-of">
        <LengthField
          label={screen.say('tool.offset-right')}
          valueMm={offset.xMm}
          ruler={words.ruler}
          leastMm={-LENGTH_MM_MOST}
          change={(xMm) => editor.edit({ do: 'offset', piece, of, xMm, yMm: offset.yMm })}
        />
        <LengthField
          label={screen.say('tool.offset-back')}
          valueMm={offset.yMm}
          ruler={words.ruler}
          leastMm={-LENGTH_MM_MOST}
          change={(yMm) => editor.edit({ do: 'offset', piece, of, xMm: offset.xMm, yMm })}
        />
        <NumberField
          label={screen.say('tool.turned')}
          unit="rad"
          ruler={words.ruler}
          least={-FULL_TURN_RAD}
          most={FULL_TURN_RAD}
          value={(degreesOf(laid.turnRad) * Math.PI) / 180}
          change={(turnRad) => editor.edit({ do: 'turn-to', piece, degrees: Math.round((turnRad * 180) / Math.PI) })}
        />
      </div>
      <p className="small">{screen.say('tool.minus')}</p>
      <div className="row-of">
        <button type="button" className="btn" onClick={() => editor.edit({ do: 'put-on', piece, of })}>
          {screen.say('tool.put-on')}
        </button>
        <button
          type="button"
          className="btn"
          aria-pressed={laid.on === 'table'}
          onClick={() => editor.edit({ do: 'stand', piece, on: laid.on === 'table' ? 'what-is-below' : 'table' })}
        >
          {screen.say('tool.stand')}
        </button>
        {of !== 'table' && (
          <button type="button" className="btn" onClick={() => editor.edit({ do: 'put-beside', piece, of, side })}>
            {screen.say('tool.put-beside')}
          </button>
        )}
      </div>
      {of !== 'table' && (
        <Choice
          label={screen.say('tool.side')}
          options={SIDES.map((id) => ({ id, text: screen.say(`side.${id}`) }))}
          chosen={side}
          choose={setSide}
        />
      )}
      <Choice
        label={screen.say('tool.rests-on')}
        options={(solid?.restings ?? []).map(({ id }) => ({ id, text: restingNames[id] ?? id }))}
        chosen={laid.resting}
        choose={(resting) => editor.edit({ do: 'lay-on', piece, resting })}
      />
      <Choice
        label={screen.say('tool.held')}
        options={HOLDS.map((id) => ({ id, text: screen.say(`held.${id}`) }))}
        chosen={laid.held ?? 'free'}
        choose={(held) => editor.edit({ do: 'hold', piece, held: held === 'free' ? null : (held satisfies Hold) })}
      />
    </details>
  );
}

/** What a piece mainly rests on; the table where that is not known. */
function mainSupport(pieces: Pieces, piece: number, bench: Bench): number | 'table' {
  const read = readBack(pieces, bench);
  return (read.ok ? read.value[piece]?.mainly : undefined) ?? 'table';
}
