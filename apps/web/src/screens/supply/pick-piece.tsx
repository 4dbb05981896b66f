// Which piece was dropped, lost or brought back: a tap on its drawing is one stroke.

import { useState } from 'preact/hooks';
import { SolidPicture } from '../../parts/solid-picture.tsx';
import type { What } from '../../store/supply-changes.ts';
import { withStroke } from '../../store/supply-changes.ts';
import { useGame } from './game.ts';
import type { Besides } from './happened.tsx';
import { ReasonChoice } from './reason-choice.tsx';

const REASONS = ['supply-game.reason-is-crushed', 'supply-game.reason-is-torn', 'supply-game.reason-is-gone'] as const;

export function PickPiece({ kind }: { readonly kind: Exclude<Besides, 'penalty'> }) {
  const { at, say, supply, solids, scale, list, make, tell, closed } = useGame();
  const [reason, setReason] = useState<string>(() => say(REASONS[0]));
  const stroke = (piece: string): What =>
    kind === 'lost' ? { kind, piece, count: 1, reason } : { kind, piece, count: 1 };
  const put = (piece: string, name: string): void => {
    if (closed) tell({ place: kind, text: say('supply-game.over-pupils') });
    else if (kind === 'lost' && reason === '') tell({ place: kind, text: say('supply-game.reason-missing') });
    else make(kind, withStroke(list, stroke(piece)), say('supply-game.has-none', { group: at.group.name, kind: name }));
  };
  return (
    <div className="supply-panel note">
      {kind === 'lost' && <ReasonChoice reasons={REASONS.map((key) => say(key))} change={setReason} />}
      <p>{say(`supply-game.${kind}-pick`)}</p>
      <ul className="supply-picks">
        {at.challenge.kit.kinds.map(({ id, name }) => {
          const has = supply.pieces[id] ?? 0;
          const solid = solids.get(id);
          return (
            <li key={id}>
              <button
                type="button"
                className="btn"
                aria-disabled={kind !== 'dropped' && has === 0}
                onClick={() => put(id, name)}
              >
                {solid !== undefined && <SolidPicture solid={solid} scale={scale} />}
                <span>
                  {name}
                  {kind !== 'dropped' && <small className="mut">{say('supply-game.has', { count: has })}</small>}
                </span>
              </button>
            </li>
          );
        })}
      </ul>
    </div>
  );
}
