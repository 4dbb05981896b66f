// Tells the seed of this run's fresh families once, before any test starts.

import type { TestProject } from 'vitest/node';

export default function tellSeed(project: TestProject): void {
  const seed = project.config.env['CAIRNMARK_SEED'];
  process.stdout.write(`fresh seed of this run: ${seed} (repeat with CAIRNMARK_SEED=${seed})\n`);
}
