// All solids of the catalogue, drawn to one scale: a tap puts one into the kit.

import { makeSolid } from '@cairnmark/geometry';
import type { RefObject } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import { kitScale } from '../../drawing/kit-scale.ts';
import { Dialog } from '../../parts/dialog.tsx';
import { SolidPicture } from '../../parts/solid-picture.tsx';
import { addKind } from '../../store/kit-changes.ts';
import { Refused } from './refused.tsx';
import { useKit } from './use-kit.ts';
import { newKind, SOLIDS, usualSolid } from './usual-sizes.ts';

export function AddSolid({
  dialog,
  added,
}: {
  readonly dialog: RefObject<HTMLDialogElement>;
  /** Id of the new kind. */
  readonly added: (kind: string) => void;
}) {
  const { at, say, make, ruler, words } = useKit();
  const [refused, setRefused] = useState<readonly string[]>([]);
  const offered = useMemo(
    () =>
      SOLIDS.flatMap((id) => {
        const spec = usualSolid(id, ruler);
        const made = makeSolid(spec);
        return made.ok ? [{ spec, solid: made.value }] : [];
      }),
    [ruler],
  );
  const scale = useMemo(() => kitScale(offered.map(({ solid }) => solid)), [offered]);
  const add = ({ spec, solid }: (typeof offered)[number]): void => {
    const kind = newKind(at.record, at.challenge.kit, spec, words.capital(words.names.solids[solid.id]));
    const told = make(addKind(at.challenge.id, kind), say('kit.did-add', { kind: kind.name }));
    setRefused(told);
    if (told.length > 0) return;
    dialog.current?.close();
    added(kind.id);
  };
  return (
    <Dialog dialog={dialog} title={say('kit.add')}>
      <p>{say('kit.add-what')}</p>
      <ul className="kit-catalogue">
        {offered.map((one) => (
          <li key={one.solid.id}>
            <button type="button" className="btn" onClick={() => add(one)}>
              <SolidPicture solid={one.solid} scale={scale} />
              {words.capital(words.names.solids[one.solid.id])}
            </button>
          </li>
        ))}
      </ul>
      <Refused sentences={refused} />
    </Dialog>
  );
}
