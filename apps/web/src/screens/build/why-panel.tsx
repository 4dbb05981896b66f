// Why it stands or falls: the figures in words, and below them what the answer leaves out. For the teacher: tilt to one
// side, and which piece can be taken out.

import { piecesUsed } from '@cairnmark/engine';
import { useScreenWords } from '../../app/use-words.ts';
import type { Shown } from './shown.ts';
import { TeacherFold } from './teacher-fold.tsx';

/** What a group reads first; joint by joint and the rest are there for who asks. */
const FIRST_LINES = 2;

export function WhyPanel(props: Shown) {
  const { at, words, worked } = props;
  const screen = useScreenWords();
  const stability = worked.value?.stability;
  if (stability === null || stability === undefined || at.attempt === null) return null;
  const { lines, limits } = words.inClass.stability(stability, piecesUsed(at.attempt.layout));
  return (
    <div className="why">
      <Lines lines={lines.slice(0, FIRST_LINES)} />
      {lines.length > FIRST_LINES && (
        <details className="why-figures">
          <summary>{screen.say('verdict.figures')}</summary>
          <Lines lines={lines.slice(FIRST_LINES)} />
        </details>
      )}
      <details>
        <summary>{screen.say('verdict.limits')}</summary>
        <Lines lines={limits} />
      </details>
      <TeacherFold {...props} />
    </div>
  );
}

const Lines = ({ lines }: { readonly lines: readonly string[] }) => (
  <ul>
    {lines.map((line) => (
      <li key={line}>{line}</li>
    ))}
  </ul>
);
