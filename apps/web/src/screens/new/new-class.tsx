// A new class: its name, its groups, and what it begins with. Two minutes of typing; everything can be changed later.

import { loadWords } from '@cairnmark/words';
import { useCallback } from 'preact/hooks';
import { Arriving } from '../../app/arriving.tsx';
import { PlanSpeaking } from '../../app/planning.tsx';
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
  const { language } = useScreenWords();
  const ask = useCallback(() => loadWords(language), [language]);
  return <Arriving ask={ask}>{(words) => <Form words={words} />}</Arriving>;
}
