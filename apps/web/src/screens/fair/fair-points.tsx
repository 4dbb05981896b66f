// Fair points: what the points make of single pieces, points that favour a solid or nobody, and what they would have made of the
// class.

import { useState } from 'preact/hooks';
import { planning } from '../../app/planning.tsx';
import { TalkSpeaking } from '../../app/talk-words.tsx';
import { HelpArea } from '../../parts/asked-help.tsx';
import type { At } from '../../store/where-at.ts';
import { EarnBars } from './earn-bars.tsx';
import './fair.css';
import { FairHead } from './fair-head.tsx';
import { FindPart } from './find-part.tsx';
import { LabContext } from './lab.ts';

import './narrow.css';
import { PointsColumn } from './points-column.tsx';
import { RiddlePart } from './riddle-part.tsx';
import { useLabAt } from './use-lab-at.ts';
import { WhoWon } from './who-won.tsx';

export default planning(FairPoints);

/** Another challenge has another kit and other points: nothing that was tried goes along. */
function FairPoints({ at }: { readonly at: At }) {
  return (
    <TalkSpeaking>
      <LabOf key={at.challenge.id} at={at} />
    </TalkSpeaking>
  );
}

function LabOf({ at }: { readonly at: At }) {
  const lab = useLabAt(at);
  const [isAsked, ask] = useState(false);
  const isCompared = lab.kit.kinds.length > 1;
  return (
    <LabContext value={lab}>
      <HelpArea>
        <div className="page fair">
          <FairHead isAsked={isAsked} use={() => ask(true)} />
          {isAsked && <WhoWon close={() => ask(false)} />}
          <div className="fair-cols">
            <PointsColumn />
            <EarnBars />
            {isCompared ? <FindPart /> : <p className="note">{lab.say('lab.few-kinds')}</p>}
          </div>
          {isCompared && <RiddlePart />}
        </div>
      </HelpArea>
    </LabContext>
  );
}
