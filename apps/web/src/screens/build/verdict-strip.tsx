// Does it stand? One word, one sentence, and the next step: show why, make the move that mends it, keep the rule.

import { piecesUsed } from '@cairnmark/engine';
import { useScreenWords } from '../../app/use-words.ts';
import { HelpList } from '../../parts/asked-help.tsx';
import { useEngine } from '../../workers/use-engine.ts';
import type { BuildState } from './build-state.ts';
import { buildState, moodOf } from './build-state.ts';
import { Help } from './help.tsx';
import { MendButton } from './mend-button.tsx';
import type { Shown } from './shown.ts';
import { StateSign } from './state-sign.tsx';
import { isTallTower } from './tall-tower.ts';
import { WhyPanel } from './why-panel.tsx';

interface VerdictProps extends Shown {
  readonly again: () => void;
  readonly setWhy: (why: boolean) => void;
}

export function VerdictStrip(props: VerdictProps) {
  const { at, words, worked, why, setWhy, again, help, dragging } = props;
  const screen = useScreenWords();
  const engine = useEngine();
  const isTall = isTallTower(worked.value);
  const state = buildState(at.attempt?.layout ?? { kind: 'laid-out', pieces: [] }, worked);
  const { title, sentence } = useVerdictText(state, props);
  return (
    <section className={`verdict ${moodOf(state)}`} data-state={state.is} aria-busy={worked.working}>
      <StateSign state={state} />
      {/* Spoken once the build rests, not at every step of a drag. */}
      <div aria-live={dragging ? 'off' : 'polite'} aria-atomic="true">
        <h2>{title}</h2>
        <p>{sentence}</p>
      </div>
      <div className="verdict-do">
        {state.is === 'working' && state.progress !== null && (
          <button type="button" className="btn" onClick={() => engine.cancel()}>
            {screen.say('verdict.cancel')}
          </button>
        )}
        {(state.is === 'stopped' || state.is === 'failed') && (
          <button type="button" className="btn" onClick={again}>
            {screen.say('verdict.again')}
          </button>
        )}
        {!dragging && <MendButton {...props} state={state} />}
        {worked.value?.stability && (
          <button type="button" className="btn" aria-expanded={why} onClick={() => setWhy(!why)}>
            {screen.say(why ? 'verdict.hide-why' : 'verdict.show-why')}
          </button>
        )}
      </div>
      {help && <Help text="help.verdict" />}
      {worked.value?.stability && <HelpList on={help} items={[['help.why', screen.say('verdict.show-why')]]} />}
      {help && !isTall && <p className="help note">{words.words.cautions['tall-towers']}</p>}
      {/* Always there, so that it is read out once it says something. */}
      <div className="caution" aria-live="polite">
        {isTall && words.words.cautions['tall-towers']}
      </div>
      {why && <WhyPanel {...props} />}
    </section>
  );
}

function useVerdictText(state: BuildState, { at, words, worked }: Shown): { title: string; sentence: string } {
  const screen = useScreenWords();
  const text = (title: string, sentence: string) => ({ title, sentence });
  const kinds = at.attempt === null ? [] : piecesUsed(at.attempt.layout);
  switch (state.is) {
    case 'empty':
      return text(screen.say('verdict.ready'), screen.say('verdict.ready-what'));
    case 'working':
      return text(
        screen.say('verdict.working'),
        state.progress === null
          ? screen.say('verdict.working-soon')
          : screen.say('verdict.working-what', { solved: state.progress.solved, most: state.progress.most }),
      );
    case 'stopped':
      return text(screen.say('verdict.stopped'), screen.say('verdict.stopped-what'));
    case 'failed':
      return text(screen.say('verdict.failed'), screen.say('verdict.stopped-what'));
    case 'refused':
      return text(screen.say('verdict.refused'), worked.issues.map((issue) => words.words.issue(issue)).join(' '));
    case 'numbers-only':
      return text(screen.say('verdict.numbers'), screen.say('verdict.numbers-what'));
    case 'rule-broken': {
      const { broken, stability } = state;
      const sentences = broken.flatMap((id) => {
        const line = worked.value?.requirements.find(({ requirement }) => requirement === id);
        const rule = at.challenge.requirements.find((one) => one.id === id);
        return line === undefined || rule === undefined ? [] : [words.inClass.rule(line, rule, 0)];
      });
      const title =
        broken.length === 1
          ? screen.say('verdict.one-broken')
          : screen.say('verdict.several-broken', { count: broken.length });
      const brief = stability === null ? null : words.inClass.stabilityBrief(stability, kinds);
      return text(title, [...sentences, ...(brief === null ? [] : [`${brief.title}.`, brief.sentence])].join(' '));
    }
    case 'judged': {
      const brief = words.inClass.stabilityBrief(state.stability, kinds);
      return text(brief.title, brief.mend === null ? brief.sentence : `${brief.sentence} ${brief.mend}`);
    }
  }
}
