import { lstatSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { isAtWork } from './left-behind.ts';

/** How long a run waits for others, ms: a set takes a small part of a second to write. */
const patience = 10_000;

/** A flag that has been up for longer, ms, is nobody's: its run was killed, and its number given to another process. */
const longest = 600_000;

const pause = 5;

/**
 * Does something in a folder while no other run of this machine does, for two that change a set of files together would leave a
 * mixture. Each puts up a flag, gives way to those with a lower number, and waits for those with a higher one to take theirs down
 * (the one-bit algorithm of Burns, and of Lamport, The mutual exclusion problem, 1986, from memory): flags are put up and taken
 * down by their owners alone, so none is ever taken for one left behind. Throws where another is at it for ten seconds.
 */
export async function takingTurns(folder: string, act: () => Promise<void>): Promise<void> {
  const own = join(folder, flagName(process.pid));
  const end = Date.now() + patience;
  const gone = async (isMeant: (pid: number) => boolean): Promise<boolean> => {
    const other = flagsUp(folder).find(isMeant);
    if (other === undefined) return true;
    if (Date.now() > end) throw new Error(`another run (process ${other}) is writing there.`);
    await setTimeout(pause);
    return false;
  };
  try {
    for (;;) {
      writeFileSync(own, '');
      if (!flagsUp(folder).some(isLower)) break;
      rmSync(own);
      while (!(await gone(isLower)));
    }
    while (!(await gone((pid) => pid > process.pid)));
    await act();
  } finally {
    rmSync(own, { force: true });
  }
}

const flags = /^\.bodkin\.(\d+)\.turn$/;

const flagName = (pid: number): string => `.bodkin.${pid}.turn`;

const isLower = (pid: number): boolean => pid < process.pid;

/** The numbers of the processes at work whose flag is up. */
const flagsUp = (folder: string): readonly number[] =>
  readdirSync(folder)
    .filter((name) => flags.test(name) && isNew(join(folder, name)))
    .map((name) => Number(flags.exec(name)?.[1]))
    .filter(isAtWork);

function isNew(flag: string): boolean {
  const there = lstatSync(flag, { throwIfNoEntry: false });
  return there !== undefined && Date.now() - there.mtimeMs < longest;
}
