// A new class: its name, its groups, and what it begins with. Two minutes of typing; everything can be changed later.

import { loadWords } from '@cairnmark/words';
import { useCallback } from 'preact/hooks';
import { Lost } from '../../app/lost.tsx';
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
  return lost ? <Lost again={again} /> : <p className="page">{say('frame.loading')}</p>;
}
