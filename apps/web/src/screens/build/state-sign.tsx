// The sign beside what the strip says: the verdict as physics, a cross for what is broken or refused.

import { VerdictSign } from '../../parts/verdict-sign.tsx';
import type { BuildState } from './build-state.ts';

export function StateSign({ state }: { readonly state: BuildState }) {
  if (state.is === 'judged') return <VerdictSign verdict={state.stability.verdict} />;
  if (state.is !== 'rule-broken' && state.is !== 'refused') return <span className="verdict-sign" />;
  return (
    <svg className="verdict-sign" viewBox="0 0 44 44" aria-hidden="true">
      <path d="M11 11l22 22M33 11L11 33" stroke="currentColor" strokeWidth="3" />
    </svg>
  );
}
