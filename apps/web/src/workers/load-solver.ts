// The large linear solver: three and a half megabytes that are fetched when the first build asks for them.

import type { HighsRuntime, LinearSolver } from '@cairnmark/geometry';
import { highsSolver } from '@cairnmark/geometry';

export async function loadSolver(): Promise<LinearSolver> {
  const { default: load } = await import('highs');
  // The module's types are those of its CommonJS build; what is imported is the loader itself. It knows where its runtime is.
  const loader = load as unknown as () => Promise<HighsRuntime>;
  return highsSolver(await loader());
}
