// All that decides who wins. Once groups have built under it, it can be read and no longer be changed.

import { CountingFold } from './counting-fold.tsx';
import { CriteriaFold } from './criteria-fold.tsx';
import { useForm } from './form.ts';
import { GapsFold } from './gaps-fold.tsx';
import { KitFold } from './kit-fold.tsx';
import { OwnFold } from './own-fold.tsx';
import { PlacesFold } from './places-fold.tsx';
import { Points } from './points.tsx';
import { RulerFold } from './ruler-fold.tsx';
import { Rules } from './rules.tsx';
import { SupplyFold } from './supply-fold.tsx';

export function RuleParts() {
  const { locked, say } = useForm();
  return (
    <fieldset className="chal-rules" disabled={locked}>
      <legend className="vh">{say(locked ? 'challenge.rules-locked' : 'challenge.rules-open')}</legend>
      <Points />
      <Rules />
      <KitFold />
      <PlacesFold />
      <RulerFold />
      <CountingFold />
      <GapsFold />
      <CriteriaFold />
      <OwnFold />
      <SupplyFold />
    </fieldset>
  );
}
