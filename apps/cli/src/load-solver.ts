// The linear solver for builds that neither the fast path nor the small solver of geometry decides: three megabytes that
// are read only when such a build is asked about.

import type { HighsRuntime, LinearSolver } from '@cairnmark/geometry';
import { highsSolver } from '@cairnmark/geometry';

export async function loadSolver(): Promise<LinearSolver> {
  const { default: load } = await import('highs');
  // The module's types are those of its CommonJS build; what is imported is the loader itself.
  return highsSolver(await (load as unknown as () => Promise<HighsRuntime>)());
}
