// The piece in hand: how it lies, its taps, whether the line fits, nudges.

import { figureOf } from '@cairnmark/photo';
import { useScreenWords } from '../../app/use-words.ts';
import { Choice } from '../../parts/choice.tsx';
import type { IconName } from '../../parts/icon.tsx';
import { Icon } from '../../parts/icon.tsx';
import { decimals } from './decimals.ts';
import { handPiece, kept, nudged, otherWay, pickedUp, tapsAsked, withoutTaps } from './hand.ts';
import type { NudgeWay } from './nudges.ts';
import { moved, turned } from './nudges.ts';
import type { TraceShown } from './shown.ts';
import { Told } from './told.tsx';
import { useTraceWords } from './trace-words.ts';

const NUDGES: readonly { readonly way: NudgeWay; readonly icon: IconName; readonly text: `tool.${NudgeWay}` }[] = [
  { way: 'left', icon: 'left', text: 'tool.left' },
  { way: 'right', icon: 'right', text: 'tool.right' },
  { way: 'back', icon: 'up', text: 'tool.back' },
  { way: 'front', icon: 'down', text: 'tool.front' },
];

export function HandStep(props: TraceShown) {
  const { tracing, step, fitting, words, bench, above, hand: stood } = props;
  const trace = useTraceWords();
  const { say } = trace;
  const screen = useScreenWords();
  const { hand } = tracing;
  const solid = hand === null ? undefined : bench.solids.get(hand.kind);
  if (hand === null || solid === undefined || above === null) return null;
  const asked = tapsAsked(solid, hand.resting);
  const names: Readonly<Record<string, string>> = words.words.names.restings;
  const spot = handPiece(tracing);
  const hasFit = spot !== null && stood !== null;
  return (
    <section className="trace-step trace-hand-step" aria-busy={fitting}>
      {solid.restings.length > 1 && (
        <Choice
          label={say('trace.rests')}
          options={solid.restings.map(({ id }) => ({ id, text: names[id] ?? id }))}
          chosen={hand.resting}
          choose={(resting) => step(pickedUp(hand.kind, resting))}
        />
      )}
      {!hasFit && (
        <h2>
          {asked === 0
            ? say('trace.no-figure')
            : say(`trace.tap-${asked === 2 ? 'two' : 'three'}`, { what: say(faceOf(props)) })}
        </h2>
      )}
      {asked > 0 && !hasFit && <p className="mut trace-keys">{say('trace.keys')}</p>}
      {hand.issue !== null && <Told lines={trace.issue(hand.issue, decimals(words))} />}
      {hasFit && (
        <div role="status">
          <h2>{say('trace.fits')}</h2>
          <p className="mut">
            {say('trace.nudge')} {words.ruler.unit !== 'in' && say('trace.step')}
          </p>
          <p>{say('trace.stands-on', { what: standsOn(props) })}</p>
        </div>
      )}
      {hasFit && (
        <div className="trace-nudges">
          {NUDGES.map(({ way, icon, text }) => (
            <button
              key={way}
              type="button"
              className="btn sq"
              onClick={() => step(nudged(moved(above.camera, spot, way)))}
            >
              <Icon name={icon} />
              <span className="vh">{screen.say(text)}</span>
            </button>
          ))}
          {asked === 2 &&
            TURNS.map(({ by, icon, text }) => (
              <button key={icon} type="button" className="btn sq" onClick={() => step(nudged(turned(spot, by)))}>
                <Icon name={icon} />
                <span className="vh">{screen.say(text)}</span>
              </button>
            ))}
        </div>
      )}
      <div className="row-of">
        {hand.taps.length > 0 && (
          <button type="button" className="btn" onClick={() => step(withoutTaps)}>
            {say('trace.tap-again')}
          </button>
        )}
        {hand.ways.length > 1 && (
          <button type="button" className="btn" onClick={() => step(otherWay)}>
            {say('trace.other-way')}
          </button>
        )}
        {hasFit && (
          <button type="button" className="btn main" onClick={() => step(kept)}>
            {say('trace.it-fits')}
          </button>
        )}
      </div>
    </section>
  );

  function standsOn({ stood: below, at }: TraceShown): string {
    if (stood === null) return '';
    const holders = below.filter(({ piece }) => stood.holders.includes(piece.index));
    if (holders.length === 0) return say('trace.table');
    return words.words.listed(
      holders.map(({ piece }) =>
        say('trace.piece', {
          kind: at.challenge.kit.kinds.find(({ id }) => id === piece.kind)?.name ?? piece.kind,
          number: piece.index + 1,
        }),
      ),
    );
  }
}

const TURNS = [
  { by: 1, icon: 'turn-left', text: 'tool.turn-left' },
  { by: -1, icon: 'turn-right', text: 'tool.turn-right' },
] as const;

/** Which part of the piece is tapped, by how high it lies on it. */
function faceOf({ tracing: { hand }, bench }: TraceShown) {
  const solid = hand === null ? undefined : bench.solids.get(hand.kind);
  const side = solid?.restings.find(({ id }) => id === hand?.resting);
  const figure = solid === undefined || side === undefined ? null : figureOf(solid, side);
  if (figure === null || side === undefined) return 'trace.face-widest';
  const heights = figure.kind === 'corners' ? figure.corners.map(([, , z]) => z) : [figure.centre[2]];
  const level = heights.every((z) => z > side.heightMm - SAME_MM)
    ? 'top'
    : heights.every((z) => z < SAME_MM)
      ? 'base'
      : 'widest';
  const part = figure.kind === 'corners' || figure.kind === 'log' ? 'face' : 'rim';
  return `trace.${part}-${level}` as const;
}

/** mm. Rounding. */
const SAME_MM = 1e-6;
