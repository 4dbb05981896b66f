// Wraps a screen on which a class is planned or run: its words come together with it, in the language of the device.

import { loadPlanWords } from '@cairnmark/words';
import type { ComponentChildren, ComponentType } from 'preact';
import { useCallback } from 'preact/hooks';
import { NoClass } from '../parts/no-class.tsx';
import { useAt } from '../store/use-session.ts';
import type { At } from '../store/where-at.ts';
import { Arriving } from './arriving.tsx';
import { PlanContext } from './plan-words.ts';
import { useScreenWords } from './use-words.ts';

/** `Screen` gets where the class is at work, and stands only while a class is open. */
export function planning(Screen: ComponentType<{ readonly at: At }>): ComponentType {
  return function Planned() {
    const at = useAt();
    if (at === null) return <NoClass />;
    return (
      <PlanSpeaking>
        <Screen at={at} />
      </PlanSpeaking>
    );
  };
}

/** Hands the words of the planning screens down to what stands within. */
export function PlanSpeaking({ children }: { readonly children: ComponentChildren }) {
  const { language } = useScreenWords();
  const ask = useCallback(() => loadPlanWords(language), [language]);
  return <Arriving ask={ask}>{(words) => <PlanContext value={words}>{children}</PlanContext>}</Arriving>;
}
