import { run } from '../../cli/program.ts';
import type { ExitCode, Session } from '../../cli/session.ts';
import { bib } from '../engine/bib.ts';

export interface Ran {
  readonly code: ExitCode;
  readonly out: string;
  readonly err: string;
}

/** Runs one command line in this process, with the bib as its only garment. */
export const bodkin = (words: readonly string[], given: Partial<Session> = {}): Promise<Ran> =>
  ranBy((session) => run(words, session), given);

/** What is printed by something that runs with a session, with the bib as its only garment. */
export async function ranBy(
  command: (session: Session) => Promise<ExitCode>,
  given: Partial<Session> = {},
): Promise<Ran> {
  let [out, err] = ['', ''];
  const session: Session = {
    garments: [bib],
    write: async (text) => {
      out += text;
    },
    tell: (text) => {
      err += text;
    },
    isRead: () => true,
    live: false,
    colour: false,
    columns: 2000,
    onInterrupt: () => () => undefined,
    clock: () => 0,
    ...given,
  };
  const code = await command(session);
  return { code, out, err };
}
