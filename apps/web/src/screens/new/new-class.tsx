// A new class: its name, its groups, and what it begins with. Two minutes of typing; everything can be changed later.

import { loadWords } from '@cairnmark/words';
import { useCallback } from 'preact/hooks';
import { PlanSpeaking } from '../../app/planning.tsx';
import { useArrival } from '../../app/use-arrival.ts';
import { useScreenWords } from '../../app/use-words.ts';
import { Form } from './form.tsx';
import './new.css';

export default function NewClass() {
  return (
    <PlanSpeaking>
      <WithWords />
    </PlanSpeaking>
  );
}

/** The words about builds are not here yet when no class is open. */
function WithWords() {
  const { language, say } = useScreenWords();
  const { what, lost, again } = useArrival(useCallback(() => loadWords(language), [language]));
  if (what !== null) return <Form words={what} />;
  if (!lost) return <p className="page">{say('frame.loading')}</p>;
  return (
    <div className="page">
      <p role="alert">{say('frame.not-here-what')}</p>
      <button type="button" className="btn main" onClick={again}>
        {say('frame.again')}
      </button>
    </div>
  );
}
