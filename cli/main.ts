import { garments } from '../drafts/garments.ts';
import { run } from './program.ts';
import { processSession } from './session.ts';
import { reason } from './write-files.ts';

/** A fault of the program itself (EX_SOFTWARE of sysexits.h), as against 1 and 2, which speak of the input. */
const programFault = 70;

// Whoever reads the results may stop early (`bodkin list | head`): that is no fault.
for (const stream of [process.stdout, process.stderr])
  stream.on('error', (error: NodeJS.ErrnoException) =>
    process.exit(error.code === 'EPIPE' ? 0 : programFault),
  );

try {
  process.exitCode = await run(process.argv.slice(2), processSession(garments));
} catch (error) {
  const trace = process.env.BODKIN_DEBUG && error instanceof Error ? `\n${error.stack}` : '';
  process.stderr.write(`bodkin: a fault in the program: ${reason(error)}${trace}\n`);
  process.exitCode = programFault;
}
