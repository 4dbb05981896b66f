// Why it stands or falls: the figures in words, and below them what the answer leaves out. For the teacher: tilt to one
// side, and which piece can be taken out.

import { useScreenWords } from '../../app/use-words.ts';
import type { Shown } from './shown.ts';
import { TeacherFold } from './teacher-fold.tsx';
import { kindsIn } from './use-numbers-pieces.ts';

export function WhyPanel(props: Shown) {
  const { at, words, worked } = props;
  const screen = useScreenWords();
  const stability = worked.value?.stability;
  if (stability === null || stability === undefined) return null;
  const { lines, limits } = words.inClass.stability(stability, kindsIn(at.attempt?.layout));
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
