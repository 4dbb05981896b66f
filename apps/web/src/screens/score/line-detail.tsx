// What is behind a line: the three values side by side, the working on squared paper, the points, and a person's say.

import type { ReportedFact } from '@cairnmark/engine';
import { useMay } from '../../app/use-may.ts';
import { useCard } from './card.ts';
import { Decide } from './decide.tsx';
import type { ScoreLine } from './lines.ts';
import { ThreeValues } from './three-values.tsx';
import { WorkingSheet } from './working-sheet.tsx';

export function LineDetail({ line }: { readonly line: ScoreLine }) {
  const { at, inClass, report, say, covering } = useCard();
  const mayDecide = useMay('decide');
  const { fact, own } = line;
  const expected = own === null ? null : inClass.ownExpected(own, at.challenge.own.pi);
  const { gaps } = report;
  const covered = covering.covered.has(line.id);
  return (
    <>
      {covered && <p className="mut">{say('ours-first.working')}</p>}
      {!covered && fact !== null && isSeen(fact) && <ThreeValues fact={fact} />}
      {!covered && <WorkingSheet line={line} />}
      {!covered && gaps.length > 0 && GAP_MEASURES.includes(line.id) && (
        <ul className="card-told">
          {gaps.map((gap) => (
            <li key={gap.at.join()}>{inClass.gap(gap)}</li>
          ))}
        </ul>
      )}
      {own !== null && own.verdict !== 'agrees' && expected !== null && <p className="card-told">{expected}</p>}
      {mayDecide && fact !== null && isDecidable(fact) && <Decide fact={fact} />}
    </>
  );
}

/** Measures that a narrow gap counts as closed for. */
const GAP_MEASURES: readonly string[] = [
  'footprint-perimeter',
  'footprint-inner-perimeter',
  'footprint-parts',
  'courtyard-area',
];

/** Of these something can be seen on the real build; of the others only when a person decided on them. */
const isSeen = ({ id, observed, decided }: ReportedFact): boolean =>
  id === 'height' || observed !== null || decided !== null;

/** A person may set what is read or worked out, not what is listed, judged or earned. */
const isDecidable = ({ id, predicted }: ReportedFact): boolean =>
  predicted !== null || id === 'stood-seconds' || id === 'stands-to';
