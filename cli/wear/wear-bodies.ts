import type { WovenCloth } from '../../engine/cloth/cloth.ts';
import type { AskedGarment } from '../garment/drafted-garment.ts';
import type { FileLine } from '../input/lines.ts';
import { draftThere } from '../many-bodies/draft-there.ts';
import { eachBody } from '../many-bodies/each-body.ts';
import { refuseStyling } from '../many-bodies/walk-bodies.ts';
import type { ExitCode, Session } from '../session.ts';
import { wearLine } from './wear-line.ts';

interface BodiesWorn {
  readonly workers: number;
  readonly cloth: WovenCloth;
  readonly spacing: number;
}

/** Puts a garment on one body a line and prints one result a line; the answer is the gravest exit code of all lines. */
export async function wearBodies(
  session: Session,
  asked: AskedGarment,
  file: string,
  { workers, cloth, spacing }: BodiesWorn,
): Promise<ExitCode> {
  refuseStyling(asked);
  const { draft, styling } = asked;
  const how = { styling, cloth, spacing };
  const there = draftThere(draft, session.draftFiles?.get(draft));
  const task = there && ({ does: 'wear', draft: there, ...how } as const);
  const here = (line: FileLine) => wearLine(draft, how, line, session.clock);
  // A body takes seconds: each is handed over alone.
  return eachBody(session, file, { label: 'wearing', workers, batchSize: 1, task, here });
}
