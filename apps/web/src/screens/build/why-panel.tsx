// Why it stands or falls: the figures in words, and below them what the answer leaves out. For the teacher: tilt to one
// side, and which piece can be taken out.

import { piecesUsed } from '@cairnmark/engine';
import { useScreenWords } from '../../app/use-words.ts';
import type { Shown } from './shown.ts';
import { TeacherFold } from './teacher-fold.tsx';

export function WhyPanel(props: Shown) {
  const { at, words, worked } = props;
  const screen = useScreenWords();
  const stability = worked.value?.stability;
  if (stability === null || stability === undefined || at.attempt === null) return null;
  const { lines, limits } = words.inClass.stability(stability, piecesUsed(at.attempt.layout));
  return (
    <div className="why">
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <details>
        <summary>{screen.say('verdict.limits')}</summary>
        <ul>
          {limits.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </details>
      <TeacherFold {...props} />
    </div>
  );
}
