// The large solver, loaded once for the tests that need it.

import type { LinearSolver } from '@cairnmark/geometry';
import { highsSolver } from '@cairnmark/geometry';
import loadHighs from 'highs';

/** The module's types are those of its CommonJS build; what is imported is the loader itself. */
const load = loadHighs as unknown as typeof loadHighs.default;

export const HIGHS: LinearSolver = highsSolver(await load());
