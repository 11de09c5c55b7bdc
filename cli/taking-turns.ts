import { appendFileSync, lstatSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import {
  isAtWork,
  isBefore,
  isOnThisMachine,
  leavingName,
  readLeaving,
  thisRun,
  type WritingRun,
} from './run-name.ts';

/** How long a run waits for others, ms: a set takes a small part of a second to write. */
const patience = 10_000;

/** A flag of this machine that has been up for longer, ms, is nobody's: its run was killed, and its number given to another process. */
const longest = 600_000;

/** So often, ms, a run adds to its flag while it is up; a flag of another machine to which nothing is added for so long is nobody's. */
const [beat, silence] = [1000, 15_000];

const pause = 5;

/** How a run knows others. */
export interface Turns {
  readonly run: WritingRun;
  /** Of a flag of another machine, how long nothing may be added to it, ms. */
  readonly silence: number;
}

/**
 * Does something in a folder while no other run does, of this machine or of another that has the folder mounted, for two that
 * change a set of files together would leave a mixture. Each puts up a flag, gives way to those before it, and waits for those
 * after it to take theirs down (the one-bit algorithm of Burns, and of Lamport, The mutual exclusion problem, 1986, from memory):
 * flags are put up and taken down by their owners alone, so none is ever taken for one left behind. It asks of a mount that a
 * listing, made after a file was, shows every file made before it, as the local file systems, NFS and SMB do. `act` is told who
 * of other machines is at work. Throws where another is at it for ten seconds longer than a flag may be silent.
 */
export async function takingTurns(
  folder: string,
  act: (isAlive: (run: WritingRun) => boolean) => Promise<void>,
  { run, silence: allowed }: Turns = { run: thisRun, silence },
): Promise<void> {
  const own = join(folder, leavingName(run, 'turn'));
  const listening = new Listening(folder, allowed);
  const flagsUp = (): readonly WritingRun[] => listening.flagsUp().filter((other) => !isSame(other, run));
  let end = Date.now() + patience;
  const gone = async (isMeant: (other: WritingRun) => boolean): Promise<boolean> => {
    const other = flagsUp().find(isMeant);
    if (other === undefined) return true;
    const spare = isOnThisMachine(other) ? 0 : allowed;
    if (Date.now() > end + spare) throw new Error(`${whose(other)} is writing there.`);
    await setTimeout(pause);
    return false;
  };
  const goesFirst = (other: WritingRun): boolean => isBefore(other, run);
  const beating = setInterval(() => {
    try {
      if (lstatSync(own, { throwIfNoEntry: false })) appendFileSync(own, '.');
    } catch {
      // Taken down meanwhile, or a mount that is away for a moment: the next beat is heard.
    }
  }, beat).unref();
  try {
    for (;;) {
      writeFileSync(own, '');
      if (!flagsUp().some(goesFirst)) break;
      rmSync(own);
      while (!(await gone(goesFirst)));
    }
    end = Date.now() + patience;
    while (!(await gone((other) => !goesFirst(other))));
    await act((other) => flagsUp().some((up) => isSame(up, other)));
  } finally {
    clearInterval(beating);
    rmSync(own, { force: true });
  }
}

const isSame = (one: WritingRun, other: WritingRun): boolean =>
  one.machine === other.machine && one.pid === other.pid;

const whose = (run: WritingRun): string =>
  isOnThisMachine(run)
    ? `another run (process ${run.pid})`
    : `a run on another machine (${run.machine}, process ${run.pid})`;

/** What flags are up in a folder, whose owners are at work. */
class Listening {
  readonly #heard = new Map<string, { readonly size: number; readonly at: number }>();
  readonly #folder: string;
  readonly #silence: number;

  constructor(folder: string, silence: number) {
    this.#folder = folder;
    this.#silence = silence;
  }

  flagsUp(): readonly WritingRun[] {
    return readdirSync(this.#folder).flatMap((name) => {
      const leaving = readLeaving(name);
      if (leaving?.what !== 'turn') return [];
      const there = lstatSync(join(this.#folder, name), { throwIfNoEntry: false });
      if (!there) return [];
      const { run } = leaving;
      const isUp = isOnThisMachine(run)
        ? isAtWork(run.pid) && Date.now() - there.mtimeMs < longest
        : this.#isHeard(name, there.size);
      return isUp ? [run] : [];
    });
  }

  /** By this machine's own clock: those of others may be fast or slow. */
  #isHeard(flag: string, size: number): boolean {
    const before = this.#heard.get(flag);
    if (before?.size !== size) this.#heard.set(flag, { size, at: Date.now() });
    return before?.size !== size || Date.now() - before.at < this.#silence;
  }
}
