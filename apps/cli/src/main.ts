// The terminal program. Ends with 0 when all is well, 1 when a file has a fault, 2 when the call was not understood.

import { nodeIo } from './io.ts';
import { run } from './run.ts';

// A reader that has seen enough, such as `head`, closes the pipe: that is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});
process.exitCode = await run(process.argv.slice(2), nodeIo);
