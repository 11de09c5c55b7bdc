import { resolveStyling } from '../../engine/pattern/styling-values.ts';
import type { AskedGarment } from '../garment/drafted-garment.ts';
import { Unusable } from '../input/unusable.ts';
import type { ExitCode, Session } from '../session.ts';
import { draftThere } from './draft-there.ts';
import { eachBody } from './each-body.ts';
import { walkLine } from './walk-line.ts';

/** Lines handed to a worker at once: enough to make the hand-over cheap, few enough to keep memory small. */
const batchSize = 16;

/** Walks one body a line and prints one result a line; the answer is the gravest exit code of all lines. */
export async function walkBodies(
  session: Session,
  asked: AskedGarment,
  file: string,
  { workers, lengths = false }: { readonly workers: number; readonly lengths?: boolean | undefined },
): Promise<ExitCode> {
  const { draft, styling } = asked;
  refuseStyling(asked);
  const there = draftThere(draft, session.draftFiles?.get(draft));
  const task = there && ({ does: 'walk', draft: there, styling, lengths } as const);
  const here = (line: Parameters<typeof walkLine>[2]) =>
    walkLine(draft, styling, line, session.clock, lengths);
  return eachBody(session, file, { label: 'walking', workers, batchSize, task, here });
}

/** What no body can be drafted with is said once, not on every line. */
export function refuseStyling({ draft, styling }: AskedGarment): void {
  const usable = resolveStyling(draft.choices, styling);
  if (!usable.ok) throw new Unusable(usable.issues);
  const clashes = draft.clashes?.(usable.value) ?? [];
  if (clashes.length > 0) throw new Unusable(clashes);
}
