// Does it stand? The verdict by the sums, why, and what the sums leave out; what was seen of the real build stands above them.

import { piecesUsed } from '@cairnmark/engine';
import type { StabilityWords } from '@cairnmark/words';
import { CardHelp } from '../../app/card-help.tsx';
import { VerdictSign } from '../../parts/verdict-sign.tsx';
import { useCard } from './card.ts';

export function Stands() {
  const { at, report, say } = useCard();
  const { stability } = report;
  const told = useTold();
  const stood = at.attempt.state.kind === 'stood' && at.attempt.confirmedBy !== null;
  return (
    <section className="sec card-stands">
      <h2>{say('score-card.stands')}</h2>
      {stability === null || told === null ? (
        <p>{say('score-card.no-drawing')}</p>
      ) : (
        <>
          <div className={`card-verdict ${stability.verdict}`}>
            <VerdictSign verdict={stability.verdict} />
            <p>
              <Told sentence={told.verdict} /> {stood && say('score-card.it-stood')}
            </p>
          </div>
          {told.lines.length > 0 && <CardHelp items={[['help.why', say('score-card.why')]]} />}
          {told.lines.length > 0 && (
            <details>
              <summary>{say('score-card.why')}</summary>
              <ul className="card-told">
                {told.lines.map((line) => (
                  <li key={line}>{line}</li>
                ))}
              </ul>
            </details>
          )}
        </>
      )}
    </section>
  );
}

/** What the sums leave out: there wherever a verdict is, the caution first. */
export function Limits() {
  const { words, say } = useCard();
  const caution = words.cautions['stands-or-falls'];
  const limits = useTold()?.limits.filter((limit) => limit !== caution) ?? [];
  return (
    <section className="card-limits">
      <p>{caution}</p>
      {limits.length > 0 && <CardHelp items={[['help.limits', say('score-card.limits')]]} />}
      {limits.length > 0 && (
        <details>
          <summary>{say('score-card.limits')}</summary>
          <ul>
            {limits.map((limit) => (
              <li key={limit}>{limit}</li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}

/** null: nothing was judged, for there is no drawing. */
export function useTold(): StabilityWords | null {
  const { at, report, inClass } = useCard();
  return report.stability === null ? null : inClass.stability(report.stability, piecesUsed(at.attempt.layout));
}

/** The verdict stands before the colon, and is what is read from afar. */
function Told({ sentence }: { readonly sentence: string }) {
  const [verdict = '', ...reason] = sentence.split(': ');
  if (reason.length === 0) return sentence;
  return (
    <>
      <b className="card-word">{verdict}:</b> {reason.join(': ')}
    </>
  );
}
