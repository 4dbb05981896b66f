// The best possible build for the teacher: worked out when asked, with how high it can be on how small a base; and whether
// groups are told how near they come.

import type { FrontAnswer } from '@cairnmark/scoring';
import { bestSentences } from '@cairnmark/words';
import { useEffect } from 'preact/hooks';
import { useTalkWords } from '../../app/talk-words.tsx';
import { BestAsking } from '../../parts/best-asking.tsx';
import type { Best } from '../../workers/use-best.ts';
import { useBest } from '../../workers/use-best.ts';
import { useForm } from './form.ts';
import { Told } from './told.tsx';
import { useMake } from './use-make.ts';

export default function BestPossible() {
  const { challenge } = useForm();
  const { say } = useTalkWords();
  const best = useBest();
  // What was found is of the rules and pieces as they were.
  const { bestShown, name, ...rules } = challenge;
  const asFound = JSON.stringify(rules);
  useEffect(() => best.forget, [asFound, best.forget]);
  return (
    <>
      <p className="chal-note">
        {say('best.whose')} {say('best.teacher-only')}
      </p>
      <Asking best={best} />
      <Found best={best} />
      <Shown />
    </>
  );
}

function Asking({ best }: { readonly best: Best }) {
  const { challenge, words } = useForm();
  const { say } = useTalkWords();
  const { search, ask } = best;
  return (
    <BestAsking best={best} words={words} told="" className="chal-add">
      <button
        type="button"
        className="btn"
        onClick={() => ask({ challenge, whose: { group: null, earned: null }, front: true })}
      >
        {say(search.kind === 'found' ? 'best.again' : 'best.find')}
      </button>
    </BestAsking>
  );
}

function Found({ best: { search } }: { readonly best: Best }) {
  const { challenge, words, inClass } = useForm();
  const talk = useTalkWords();
  if (search.kind !== 'found') return null;
  const { plan, answer, front } = search.found;
  const [first, ...rest] = bestSentences(plan, answer, challenge, { words, inClass, talk });
  return (
    <div className="chal-best">
      <p role="status">
        <b>{first}</b>
      </p>
      {rest.map((line) => (
        <p key={line}>{line}</p>
      ))}
      {front !== null && <Front front={front} />}
    </div>
  );
}

/** Only where there is something to choose: a tower that is tallest and narrowest needs no table. */
function Front({ front: { points, finished } }: { readonly front: FrontAnswer }) {
  const { inClass } = useForm();
  const { say } = useTalkWords();
  if (points.length < 2 || !finished) return null;
  return (
    <table>
      <caption>{say('best.front')}</caption>
      <thead>
        <tr>
          <th scope="col">{say('best.front-base')}</th>
          <th scope="col">{say('best.front-height')}</th>
        </tr>
      </thead>
      <tbody>
        {points.map(({ baseMm2, heightMm }) => (
          <tr key={baseMm2}>
            <td>{inClass.amount('base-area', baseMm2, AREA_SHOWN_MM2)}</td>
            <td>{inClass.amount('height', heightMm, 0)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** mm2. As the sentences show a base: tenths of a cm2. */
const AREA_SHOWN_MM2 = 30;

function Shown() {
  const { challenge } = useForm();
  const { say } = useTalkWords();
  const { faults, make } = useMake();
  const isShown = challenge.bestShown === true;
  return (
    <>
      <label className="chal-check">
        <input
          type="checkbox"
          checked={isShown}
          onChange={({ currentTarget: { checked } }) =>
            make(({ bestShown, ...others }) => (checked ? { ...others, bestShown: true } : others))
          }
        />
        <span>
          {say('best.show')} <small className="mut">{say('best.show-what')}</small>
        </span>
      </label>
      <Told faults={faults} />
    </>
  );
}
