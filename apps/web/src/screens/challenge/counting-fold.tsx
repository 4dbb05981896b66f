// How faces, edges and corners are counted, and what the base is. What each way gives for a cone and a cylinder stands there.

import type { BaseDefinition } from '@cairnmark/geometry';
import { CountsTable } from './counts-table.tsx';
import { Fold } from './fold.tsx';
import { useForm } from './form.ts';
import { Radios } from './radios.tsx';
import { Told } from './told.tsx';
import { useMake } from './use-make.ts';
import { COUNTINGS, WAYS } from './ways.ts';

export function CountingFold() {
  const { challenge, words, say } = useForm();
  const { faults, make } = useMake();
  const set = say('challenge.counting-set', {
    way: say(WAYS[challenge.counting]),
    base: words.names.base[challenge.base],
  });
  return (
    <Fold title={say('challenge.counting')} set={set}>
      <Radios
        label={say('challenge.counting-way')}
        options={COUNTINGS.map((id) => ({
          id,
          text: say('challenge.counting-option', { way: say(WAYS[id]), says: words.names.counting[id] }),
        }))}
        chosen={challenge.counting}
        choose={(counting) => make((one) => ({ ...one, counting }))}
      />
      <CountsTable chosen={challenge.counting} />
      <Radios
        label={say('challenge.base')}
        options={BASES.map((id) => ({ id, text: words.capital(words.names.base[id]) }))}
        chosen={challenge.base}
        choose={(base) => make((one) => ({ ...one, base }))}
      />
      <p className="chal-note">{say('challenge.base-note')}</p>
      <Told faults={faults} />
    </Fold>
  );
}

const BASES: readonly BaseDefinition[] = ['outline-of-pieces-on-table', 'contact-patches', 'hull-of-contacts'];
