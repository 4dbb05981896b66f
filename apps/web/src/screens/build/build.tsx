// The Build screen: the rules above, the shelf at the left, the build in the middle, its pieces at the right, the verdict
// and the numbers below. Four doors lead to the same record.

import type { Pieces } from '@cairnmark/editing';
import type { Attempt, Report } from '@cairnmark/engine';
import { useMemo, useState } from 'preact/hooks';
import { useBuildWords } from '../../app/use-build-words.ts';
import { kitScale } from '../../drawing/kit-scale.ts';
import { NoClass } from '../../parts/no-class.tsx';
import { useAt } from '../../store/use-session.ts';
import type { At } from '../../store/where-at.ts';
import type { Build as Question } from '../../workers/questions.ts';
import { buildOf, useReport } from '../../workers/use-engine.ts';
import type { Worked } from '../../workers/worked.ts';
import type { Keep } from '../trace/use-tracing.ts';
import './build.css';
import './shelf.css';
import './scene.css';
import './verdict.css';
import './list.css';
import './numbers.css';
import './narrow.css';
import type { Door } from './doors.tsx';
import { Go } from './go.tsx';
import { NumbersDoor } from './numbers-door.tsx';
import { PieceList } from './piece-list.tsx';
import { withPieces } from './pieces-of-layout.ts';
import { RulesBar } from './rules-bar.tsx';
import { Scene } from './scene.tsx';
import { Shelf } from './shelf.tsx';
import type { Carry } from './shown.ts';
import { SixNumbers } from './six-numbers.tsx';
import { Traced } from './traced.tsx';
import { useBench } from './use-bench.ts';
import { useEditor } from './use-editor.ts';
import { usePreview } from './use-preview.ts';
import { VerdictStrip } from './verdict-strip.tsx';

export default function BuildScreen() {
  const at = useAt();
  return at === null ? <NoClass /> : <BuildAt at={at} />;
}

function BuildAt({ at }: { readonly at: At }) {
  const words = useBuildWords(at.challenge, at.record);
  const bench = useBench(at);
  const editor = useEditor(at, bench);
  const [preview, setPreview] = usePreview();
  // What is judged while a piece is dragged is the build that it would give.
  const seen = useSeen(at, preview);
  const asked = useReport(useQuestion(seen));
  const worked = ofTry(asked, at.attempt);
  const [carry, setCarry] = useState<Carry | null>(null);
  const [chosen, setDoor] = useState<Door | null>(null);
  const [why, setWhy] = useState(false);
  const [help, setHelp] = useState(false);
  const door = chosen ?? usualDoor(at);
  const scale = useMemo(() => kitScale(bench.solids.values()), [bench]);
  const traced = useTraced(placeOf(at));
  const dragging = preview !== null;
  const shown = { at, words, editor, worked, door, scale, why, help, dragging, carry, setCarry, preview: setPreview };
  return (
    <div className={`build door-${door}`}>
      <RulesBar {...shown} setDoor={setDoor} setHelp={setHelp} />
      {door === 'trace' ? (
        <Traced {...shown} key={placeOf(at)} keep={traced} setDoor={setDoor} />
      ) : (
        <>
          <Shelf {...shown} />
          {door === 'numbers' ? <NumbersDoor {...shown} key={placeOf(at)} setDoor={setDoor} /> : <Scene {...shown} />}
          <VerdictStrip {...shown} at={seen} setWhy={setWhy} again={asked.again} />
          <SixNumbers {...shown} at={seen} />
          <PieceList {...shown} />
          <Go {...shown} at={seen} />
        </>
      )}
    </div>
  );
}

/** What was typed for one try is not for another; the first entry begins a try, and leaves what is typed where it is. */
const placeOf = ({ group, challenge, tries, attempt }: At): string =>
  [group.id, challenge.id, attempt === null ? tries.length : tries.indexOf(attempt)].join(' ');

/** A build of which only numbers were typed goes on with numbers, one of outlines where they are seen; all others are stacked. */
function usualDoor({ attempt }: At): Door {
  const layout = attempt?.layout;
  if (layout?.kind === 'traced') return 'trace';
  return layout?.kind === 'numbers-only' && layout.pieces.length > 0 ? 'numbers' : 'stack';
}

/** What is traced of one try, so that it is still there when another door was looked through; it goes with the screen. */
const useTraced = (place: string): Keep => useMemo(() => ({ tracing: null }), [place]);

/** The same object until something changed. An empty table is no question. */
function useQuestion({ attempt, challenge, group, record }: At): Question | null {
  return useMemo(() => {
    const build = buildOf({ attempt, challenge, group, record });
    return build === null || build.attempt.layout.pieces.length === 0 ? null : build;
  }, [attempt, challenge, group, record]);
}

/** The try as it would be if the dragged piece were let go now. */
function useSeen(at: At, preview: Pieces | null): At {
  return useMemo(() => {
    if (preview === null || at.attempt === null) return at;
    return { ...at, attempt: { ...at.attempt, layout: withPieces(at.attempt.layout, preview) } };
  }, [at, preview]);
}

/** What was worked out of another try says nothing of this one. */
const ofTry = (worked: Worked<Report>, attempt: Attempt | null): Worked<Report> =>
  worked.value === null || worked.value.attempt === attempt?.id ? worked : { ...worked, value: null };
