import {
  closeSync,
  constants,
  lstatSync,
  openSync,
  readdirSync,
  rmSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import {
  isAtWork,
  isBefore,
  isOnThisMachine,
  isSame,
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

export const usualTurns: Turns = { run: thisRun, silence };

/** What a run may ask while it has its turn. */
export interface Turn {
  /** Whether another run is at work. */
  readonly isAlive: (run: WritingRun) => boolean;
  /** Throws a `LostTurn` where the run was taken for gone meanwhile, because it, or its machine, slept: all it has begun was ended by another. */
  readonly hold: () => void;
}

export class LostTurn extends Error {
  constructor() {
    super('This run stood still for so long that another took its turn.');
  }
}

/**
 * Does something in a folder while no other run does, of this machine or of another that has the folder mounted, for two that
 * change a set of files together would leave a mixture. Each puts up a flag, gives way to those before it, and waits for those
 * after it to take theirs down (the one-bit algorithm of Burns, and of Lamport, The mutual exclusion problem, 1986, from memory):
 * flags are put up and taken down by their owners alone, so none is ever taken for one left behind. It asks of a mount that a
 * listing, made after a file was, shows every file made before it, as the local file systems, NFS and SMB do. A run that sleeps
 * longer than its flag may be silent is taken for gone, and its flag taken down: `act` asks before each of its steps whether it
 * still is its turn. Throws where another is at it for ten seconds longer than a flag may be silent.
 */
export async function takingTurns(
  folder: string,
  act: (turn: Turn) => Promise<void>,
  { run, silence: allowed }: Turns = usualTurns,
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
      addTo(own);
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
    await act({
      isAlive: (other) => flagsUp().some((up) => isSame(up, other)),
      hold: () => {
        if (!lstatSync(own, { throwIfNoEntry: false })) throw new LostTurn();
      },
    });
  } finally {
    clearInterval(beating);
    rmSync(own, { force: true });
  }
}

/** Adds a sign to a flag that is up; one that was taken down stays down. */
function addTo(flag: string): void {
  const file = openSync(flag, constants.O_WRONLY | constants.O_APPEND);
  try {
    writeSync(file, '.');
  } finally {
    closeSync(file);
  }
}

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
