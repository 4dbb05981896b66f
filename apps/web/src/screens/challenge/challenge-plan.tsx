// The challenge: what earns points, what a build must keep to, and all other rules folded away; beside them the rules as
// they are read to the class.

import { useState } from 'preact/hooks';
import { usePlanWords } from '../../app/plan-words.ts';
import { planning } from '../../app/planning.tsx';
import { useBuildWords } from '../../app/use-build-words.ts';
import { HelpArea } from '../../parts/asked-help.tsx';
import { isLocked } from '../../store/challenge-lock.ts';
import type { At } from '../../store/where-at.ts';
import './challenge.css';
import { BestFold } from './best-fold.tsx';
import { ChallengeHelp } from './challenge-help.tsx';
import { Chooser } from './chooser.tsx';
import { DayFold } from './day-fold.tsx';
import { FormContext } from './form.ts';
import { GradeFold } from './grade-fold.tsx';
import { Head } from './head.tsx';
import { LabelsFold } from './labels-fold.tsx';
import type { Gone } from './lifted.ts';
import { ReadAloud } from './read-aloud.tsx';
import { RemoveFold } from './remove-fold.tsx';
import { RuleParts } from './rule-parts.tsx';
import { Undo } from './undo.tsx';

export default planning(ChallengePlan);

function ChallengePlan({ at }: { readonly at: At }) {
  const { say } = usePlanWords();
  const { challenge } = at;
  const build = useBuildWords(challenge, at.record);
  const [gone, setGone] = useState<Gone | null>(null);
  /** The challenge whose name is to be filled in next. */
  const [named, setNamed] = useState<string | null>(null);
  const locked = isLocked(at.record, challenge.id);
  return (
    <FormContext value={{ ...build, at, challenge, locked, say }}>
      <HelpArea>
        <div className="page chal">
          <h1 className="vh">{say('challenge.title-of', { name: challenge.name })}</h1>
          <Chooser arrive={setNamed} />
          <Undo gone={gone} done={() => setGone(null)} />
          <ChallengeHelp />
          {/* What is half typed belongs to the challenge it was typed for. */}
          <div className="chal-cols" key={challenge.id}>
            <div className="chal-form">
              <Head arrive={setNamed} name={named === challenge.id} named={() => setNamed(null)} />
              <RuleParts />
              <BestFold />
              <GradeFold />
              <LabelsFold />
              <DayFold />
              <RemoveFold removed={setGone} />
            </div>
            <ReadAloud />
          </div>
        </div>
      </HelpArea>
    </FormContext>
  );
}
