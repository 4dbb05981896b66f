// The card on the screen: who and how much on the left, what it is made of on the right.

import type { Report } from '@cairnmark/engine';
import type { Standing } from '@cairnmark/scoring';
import { HelpArea } from '../../parts/asked-help.tsx';
import type { Asked } from '../../workers/use-engine.ts';
import { ByHand } from './by-hand.tsx';
import { useCard } from './card.ts';
import { Head } from './head.tsx';
import { LinesTable } from './lines-table.tsx';
import { Marks } from './marks-section.tsx';
import { NextSteps } from './next-steps.tsx';
import { RealBuild } from './real-build.tsx';
import { Rules } from './rules.tsx';
import { Limits, Stands } from './stands.tsx';
import { Tries } from './tries-section.tsx';
import { Again, Progress, textOf } from './working-it-out.tsx';

export function Sheet({ standing, worked }: { readonly standing: Standing | null; readonly worked: Asked<Report> }) {
  const { at, say } = useCard();
  const built = at.attempt.state.kind !== 'absent' && at.attempt.state.kind !== 'not-taking-part';
  return (
    <HelpArea>
      <div className="page card" aria-busy={worked.working}>
        <div className="card-left">
          <Head standing={standing} />
          {built && (
            <div>
              <Rules />
              <Stands />
            </div>
          )}
          <NextSteps />
          {built && <Limits />}
        </div>
        <div className="card-right">
          <Progress worked={worked} />
          {(worked.failed !== null || worked.stopped) && <p className="mut">{say(textOf(worked))}</p>}
          <Again worked={worked} />
          <RealBuild />
          {built && <LinesTable />}
          {built && at.challenge.criteria.length > 0 && <Marks />}
          {built && <ByHand />}
          <Tries />
        </div>
        <p className="vh" role="status">
          {worked.failed === null && !worked.stopped ? '' : say(textOf(worked))}
        </p>
      </div>
    </HelpArea>
  );
}
