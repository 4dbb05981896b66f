// What every kind of test run shares: the packages are read from their sources, each run has one fresh seed, and its
// counts are left where tests/tools/run.mjs adds them up.

/** Settings of Vite, for tests and for what they start. */
export const onSources = {
  resolve: { conditions: ['@cairnmark/source'] },
  ssr: { resolve: { conditions: ['@cairnmark/source'] } },
};

/** One seed a run, told once at its start and handed to every test file: see tests/tools/share.ts and tell-seed.ts. */
export function freshRun(env: NodeJS.ProcessEnv) {
  const seed = env['CAIRNMARK_SEED'] ?? String(Math.floor(Math.random() * 2 ** 31));
  const counts = env['CAIRNMARK_COUNTS'];
  const reporters: ('default' | ['json', { outputFile: string }])[] =
    counts === undefined ? ['default'] : ['default', ['json', { outputFile: counts }]];
  return { env: { CAIRNMARK_SEED: seed }, reporters };
}
