// Guess the rule: a few scored pieces, a secret rule, and one more piece to try a guess on.

import { isCountedRow, withRows } from '@cairnmark/engine';
import type { RiddleRule, RuleFamily } from '@cairnmark/scoring';
import { RULE_FAMILIES } from '@cairnmark/scoring';
import { labKindName, pointsRuleText } from '@cairnmark/words';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { kitScale } from '../../drawing/kit-scale.ts';
import { Choice } from '../../parts/choice.tsx';
import { Icon } from '../../parts/icon.tsx';
import { SolidPicture } from '../../parts/solid-picture.tsx';
import { useFairSearch } from '../../workers/use-fair.ts';
import { GuessForm } from './guess-form.tsx';
import type { Lab } from './lab.ts';
import { useLab } from './lab.ts';

export function RiddlePart() {
  const lab = useLab();
  const { say, kit, counting } = lab;
  const [family, setFamily] = useState<RuleFamily>('one');
  const { found, ask, forget } = useFairSearch('riddle');
  // A riddle is about the counts as they were.
  useEffect(() => forget, [counting, forget]);
  // A rule that takes something off goes with rows that are counted; so do all of them, since pupils count by themselves.
  const data = withRows(kit.data, (id) => kit.rows.some((row) => row.id === id && isCountedRow(row)));
  return (
    <details className="fair-fold fair-riddle">
      <summary>{say('lab.riddle')}</summary>
      <p className="mut">{say('lab.riddle-lede')}</p>
      <Choice
        label={say('lab.family')}
        options={RULE_FAMILIES.map((id) => ({ id, text: say(`lab.family-${id}`) }))}
        chosen={family}
        choose={(next) => {
          setFamily(next);
          forget();
        }}
      />
      <button type="button" className="btn" onClick={() => ask({ data, family, pick: chance() })}>
        {say('lab.new-riddle')}
      </button>
      {found.kind === 'failed' && (
        <p className="badbox" role="alert">
          {say('lab.failed')}
        </p>
      )}
      {found.kind === 'answered' && <Asked key={JSON.stringify(found.answer.riddle)} answer={found.answer} />}
    </details>
  );
}

type Answer = Extract<ReturnType<typeof useFairSearch<'riddle'>>['found'], { kind: 'answered' }>['answer'];

function Asked({ answer: { riddle, onKit } }: { readonly answer: Answer }) {
  const lab = useLab();
  const { say, words } = lab;
  const [isTold, tell] = useState(false);
  const [isShown, show] = useState(false);
  const points = (value: number): string => words.counted('points', value);
  const { check } = riddle;
  return (
    <div className="fair-asked">
      <div className="fair-given">
        <h3>{say('lab.scored')}</h3>
        <ul className="fair-examples">
          {riddle.examples.map((piece) => (
            <li key={piece.kind} className="fair-example">
              <Picture kind={piece.kind} />
              <span>{labKindName(piece.kind, lab)}</span> <b>{points(piece.points)}</b>
            </li>
          ))}
        </ul>
        {check !== null && (
          <div className="fair-check">
            <Picture kind={check.kind} />
            <span>{say('lab.try-on', { solid: labKindName(check.kind, lab) })}</span>
            {isShown ? (
              <b className="fair-shown">{points(check.points)}</b>
            ) : (
              <button type="button" className="btn" onClick={() => show(true)}>
                {say('lab.show-piece')}
              </button>
            )}
            <span className="fair-blank" aria-hidden="true" />
          </div>
        )}
      </div>
      <GuessForm riddle={riddle} />
      <OnPaper riddle={riddle} />
      <div className="fair-buttons">
        <button type="button" className="btn" aria-pressed={isTold} onClick={() => tell(!isTold)}>
          {say('lab.show-rule')}
        </button>
        <button type="button" className="btn" onClick={() => window.print()}>
          <Icon name="print" />
          {say('lab.print-riddle')}
        </button>
      </div>
      <div role="status" className="fair-told">
        {isTold && (
          <>
            <p>
              <b>{say('lab.the-rule', { rule: riddleText(riddle.rule, lab) })}</b>
            </p>
            {riddle.sameAs.length > 0 && (
              <p>{say('lab.same-as', { rules: riddle.sameAs.map((rule) => riddleText(rule, lab)).join('; ') })}</p>
            )}
          </>
        )}
      </div>
      <Alike onKit={onKit} />
    </div>
  );
}

/** What stands on the screen around the riddle, for those who have the paper alone; and a line for their guess. */
function OnPaper({ riddle: { family } }: Pick<Answer, 'riddle'>) {
  const { say, kit, words, counting, inClass } = useLab();
  const counted = words.listed(kit.rows.filter(isCountedRow).map(({ id }) => inClass.label(id)));
  return (
    <div className="fair-paper" aria-hidden="true">
      <p>{say('lab.riddle-kind', { kind: say(`lab.family-${family}`) })}</p>
      <p>{say('lab.riddle-counted', { rows: counted, counting: words.names.counting[counting] })}</p>
      <p className="fair-write">{say('lab.write-rule')}</p>
    </div>
  );
}

function Picture({ kind }: { readonly kind: string }) {
  const { kit } = useLab();
  const scale = useMemo(() => kitScale(kit.solids.values()), [kit.solids]);
  const solid = kit.solids.get(kind);
  return solid === undefined ? null : <SolidPicture solid={solid} scale={scale} />;
}

/** What this kit cannot tell apart, and what tells all the rest. */
function Alike({ onKit }: { readonly onKit: Answer['onKit'] }) {
  const lab = useLab();
  const { say, words } = lab;
  const [one, other] = onKit.alike[0] ?? [];
  return (
    <p className="mut fair-teacher">
      {one !== undefined && other !== undefined
        ? say('lab.cannot-tell', { one: riddleText(one, lab), other: riddleText(other, lab) })
        : say('lab.tell-all', { solids: words.listed(onKit.examplesForAll.map((kind) => labKindName(kind, lab))) })}
    </p>
  );
}

/** "2 points for every face and 1 point for the piece itself". */
function riddleText({ rates, each }: RiddleRule, lab: Lab): string {
  const { say, words, kit } = lab;
  const rows = kit.rows.filter(isCountedRow).map(({ id }) => id);
  const text = pointsRuleText(rows, rates, lab);
  if (each === 0) return text;
  return words.listed([text, say('lab.piece-itself', { points: words.counted('points', each) })]);
}

/** From 0 to below 1: nobody can tell which rule comes next. */
const chance = (): number => (crypto.getRandomValues(new Uint32Array(1))[0] ?? 0) / 2 ** 32;
