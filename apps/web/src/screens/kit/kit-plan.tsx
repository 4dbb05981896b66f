// The kit: kinds of piece, their sizes, how many there are; what they are made of, what a group measured itself, and what the
// printer made of them.

import { useRef, useState } from 'preact/hooks';
import { planning } from '../../app/planning.tsx';
import { HelpArea } from '../../parts/asked-help.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { nameKit } from '../../store/kit-changes.ts';
import type { At } from '../../store/where-at.ts';
import { GroupFold } from './group-fold.tsx';
import { KindsTable } from './kinds-table.tsx';
import { KitHead } from './kit-head.tsx';
import { MaterialFold, MaterialSentence } from './material-fold.tsx';
import { PrintFold } from './print-fold.tsx';
import { KitContext, useKit } from './use-kit.ts';
import { useKitAt } from './use-kit-at.ts';
import './kit.css';
import './narrow.css';

export default planning(KitPlan);

/** Another challenge has another kit: nothing of what was typed or made last goes along. */
function KitPlan({ at }: { readonly at: At }) {
  return <KitOf key={at.challenge.id} at={at} />;
}

function KitOf({ at }: { readonly at: At }) {
  const kit = useKitAt(at);
  const [fresh, setFresh] = useState<string | null>(null);
  const material = useRef<HTMLDetailsElement>(null);
  const openMaterial = (): void => {
    const fold = material.current;
    if (fold === null) return;
    fold.open = true;
    fold.querySelector('summary')?.focus();
  };
  return (
    <KitContext value={kit}>
      <div className="page kit">
        <HelpArea>
          <KitHead added={setFresh} />
          <KindsTable fresh={fresh} />
          <MaterialSentence open={openMaterial} />
          <MaterialFold fold={material} />
          <GroupFold />
          <PrintFold />
          <KitName />
        </HelpArea>
      </div>
    </KitContext>
  );
}

function KitName() {
  const { at, say, make } = useKit();
  const { name: kept } = at.challenge.kit;
  const rename = (name: string): readonly string[] =>
    make(nameKit(at.challenge.id, name), say('kit.did-name', { name }));
  return (
    <div className="kit-name">
      <TextField label={say('kit.name')} value={kept} empty={say('kit.name-empty', { kept })} change={rename} />
    </div>
  );
}
