// The game in which pieces are earned, or none: how it ends, when the next one goes, what becomes of a dropped piece.

import { COUNT_MOST, SECONDS_MOST } from '@cairnmark/engine';
import type { SupplyRule } from '@cairnmark/scoring';
import { Choice } from '../../parts/choice.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { withSupply } from '../../store/rule-settings.ts';
import { GAME_ENDS, usualEnd, usualGame } from '../../store/usual-games.ts';
import { Fold } from './fold.tsx';
import { useForm } from './form.ts';
import { Radios } from './radios.tsx';
import { Told } from './told.tsx';
import { useMake } from './use-make.ts';

export function SupplyFold() {
  const { challenge, locked, words, say } = useForm();
  const { faults, make } = useMake();
  const { supply } = challenge;
  const set = supply === null ? say('challenge.supply-none') : words.game(supply).join(' ');
  return (
    <Fold title={say('challenge.supply')} set={set}>
      {locked ? (
        <p>{set}</p>
      ) : (
        <Choice
          label={say('challenge.supply-played')}
          options={[
            { id: 'no', text: say('challenge.supply-no') },
            { id: 'yes', text: say('challenge.supply-yes') },
          ]}
          chosen={supply === null ? 'no' : 'yes'}
          choose={(id) => {
            if ((id === 'yes') !== (supply !== null)) make(withSupply(id === 'yes' ? usualGame('time') : null));
          }}
        />
      )}
      <Told faults={faults} />
      {supply !== null && !challenge.requirements.some(({ kind }) => kind === 'only-earned') && (
        <p className="note">{say('challenge.supply-not-held')}</p>
      )}
      {supply !== null && <Game supply={supply} change={(next) => make(withSupply(next))} />}
    </Fold>
  );
}

function Game({ supply, change }: { readonly supply: SupplyRule; readonly change: (rule: SupplyRule) => boolean }) {
  const { words, ruler, say } = useForm();
  const { ends } = supply;
  const [END, HAND_OVER, DROPPED] = [0, 1, 2] as const;
  const told = (rule: SupplyRule, which: number): string => words.game(rule)[which] ?? '';
  return (
    <>
      <Radios
        label={say('challenge.supply-ends')}
        options={GAME_ENDS.map((kind) => ({ id: kind, text: told({ ...supply, ends: endOf(kind, ends) }, END) }))}
        chosen={ends.kind}
        choose={(kind) => change({ ...supply, ends: endOf(kind, ends) })}
      />
      {ends.kind === 'time' && (
        <NumberField
          label={say('challenge.supply-time')}
          value={ends.seconds}
          unit="s"
          ruler={ruler}
          least={1}
          most={SECONDS_MOST}
          change={(seconds) => change({ ...supply, ends: { kind: 'time', seconds } })}
        />
      )}
      {ends.kind === 'turns' && (
        <NumberField
          label={say('challenge.supply-turns')}
          value={ends.turns}
          unit="count"
          unitName={say('challenge.turns-unit')}
          ruler={ruler}
          least={1}
          most={COUNT_MOST}
          whole
          change={(turns) => change({ ...supply, ends: { kind: 'turns', turns } })}
        />
      )}
      <div className="chal-two">
        <Radios
          label={say('challenge.supply-hand-over')}
          options={HAND_OVERS.map((id) => ({ id, text: told({ ...supply, handOver: id }, HAND_OVER) }))}
          chosen={supply.handOver}
          choose={(handOver) => change({ ...supply, handOver })}
        />
        <Radios
          label={say('challenge.supply-dropped')}
          options={DROPS.map((id) => ({ id, text: told({ ...supply, dropped: id }, DROPPED) }))}
          chosen={supply.dropped}
          choose={(dropped) => change({ ...supply, dropped })}
        />
      </div>
    </>
  );
}

/** An end of that kind, with the number it has or a usual one. */
const endOf = (kind: SupplyRule['ends']['kind'], now: SupplyRule['ends']): SupplyRule['ends'] =>
  kind === now.kind ? now : usualEnd(kind);

const HAND_OVERS: readonly SupplyRule['handOver'][] = ['at-a-touch', 'once-it-lies', 'as-the-group-likes'];
const DROPS: readonly SupplyRule['dropped'][] = ['lost-this-turn', 'must-be-fetched', 'carrier-chooses'];
