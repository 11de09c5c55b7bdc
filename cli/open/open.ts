import { Command } from 'commander';
import { inPackage } from '../beside.ts';
import { wholeNumber } from '../input/options.ts';
import { reason } from '../input/reason.ts';
import { unusable } from '../input/unusable.ts';
import { tell } from '../output/say.ts';
import type { ExitCode, Session } from '../session.ts';
import { pageFiles, type ServedPage, servePage } from './page-server.ts';

/** The same at every start, for a browser keeps what was typed by the address it was typed at. */
const usualPort = 26341;

/** `bodkin open`: the page, served to this machine alone, until it is ended. */
export const openCommand = (session: Session, finish: (code: ExitCode) => void): Command =>
  new Command('open')
    .description(
      'serve the page, on which everything is done in a browser, to this machine alone; ends with Ctrl+C',
    )
    .option('--port <number>', 'the port it is served on', wholeNumber(0, 65_535), usualPort)
    .action(async ({ port }: { readonly port: number }) => {
      const served = await servedFrom(inPackage('.dist/page/'), port);
      tell(session, `The page is at ${served.address} for as long as this runs. Ctrl+C ends it.\n`);
      await ended();
      await served.close();
      finish(0);
    });

/** Serves the page built into a folder. Throws `Unusable`: `page-not-built`, `cannot-listen`. */
export async function servedFrom(folder: URL, port: number): Promise<ServedPage> {
  const files = await pageFiles(folder).catch(() => undefined);
  if (!files?.has('/'))
    throw unusable('page-not-built', 'open', 'The page is not built yet: run “npm run page” first.');
  return servePage(files, port).catch((error: unknown) => {
    throw unusable(
      'cannot-listen',
      '--port',
      `Nothing can be served on port ${port}: ${inUse(error) ? 'something else is served there, perhaps this page already' : reason(error)}.`,
    );
  });
}

const inUse = (error: unknown): boolean =>
  typeof error === 'object' && error !== null && 'code' in error && error.code === 'EADDRINUSE';

/** Waits until this process is asked to end. */
const ended = (): Promise<void> =>
  new Promise((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve());
  });
