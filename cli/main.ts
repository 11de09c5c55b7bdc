import { garments } from '../drafts/garments.ts';
import { hasOwnDraft, runApart } from './apart/run-apart.ts';
import { leadsNowhere } from './files/leads-nowhere.ts';
import { reason } from './input/reason.ts';
import { run } from './program.ts';
import { FAULT, hasLeft, processSession } from './session.ts';

/** Results that cannot be put where they should go (EX_IOERR of sysexits.h). */
const notWritten = 74;

// That a reader stops early is no fault, and changes nothing of what was found.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (hasLeft(error)) return;
  process.stderr.write(`error: the results cannot be written: ${reason(error)}\n`);
  process.exit(notWritten);
});
process.stderr.on('error', (error: NodeJS.ErrnoException) => {
  if (!hasLeft(error)) process.exit(notWritten);
});

try {
  const words = process.argv.slice(2);
  const session = processSession(garments, leadsNowhere(1));
  process.exitCode = await (hasOwnDraft(words) ? runApart(words, session) : run(words, session));
} catch (error) {
  const trace = process.env.BODKIN_DEBUG && error instanceof Error ? `\n${error.stack}` : '';
  process.stderr.write(`bodkin: a fault in the program: ${reason(error)}${trace}\n`);
  process.exitCode = FAULT;
}
