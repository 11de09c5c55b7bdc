import { hostname } from 'node:os';

/** A run, by the machine it is on and the number of its process there. */
export interface WritingRun {
  readonly machine: string;
  readonly pid: number;
}

/** Dots part a name. */
const thisMachine =
  hostname()
    .replaceAll(/[^\w-]/g, '-')
    .slice(0, 60) || 'here';

export const thisRun: WritingRun = { machine: thisMachine, pid: process.pid };

/** What a run makes beside the names that a set is to take: the folder of the set, and the flag that it puts up while it writes. */
type What = 'set' | 'turn';

/** Whose something left in a folder is, and what. */
export interface Leaving {
  readonly run: WritingRun;
  readonly what: What;
}

export const leavingName = ({ machine, pid }: WritingRun, what: What): string =>
  `.bodkin.${machine}.${pid}.${what}`;

const leavings = /^\.bodkin\.(?:([\w-]+)\.)?(\d+)\.(set|turn)$/;

/** Whose a name is, and what; nothing where it is none of these. One without a machine is of this one. */
export function readLeaving(name: string): Leaving | undefined {
  const [, machine = thisMachine, pid, what] = leavings.exec(name) ?? [];
  if (pid === undefined || what === undefined) return undefined;
  return { run: { machine, pid: Number(pid) }, what: what === 'set' ? 'set' : 'turn' };
}

/** An order in which all runs of all machines stand: by whom the others let go first. */
export const isBefore = (one: WritingRun, other: WritingRun): boolean =>
  one.machine === other.machine ? one.pid < other.pid : one.machine < other.machine;

export const isSame = (one: WritingRun, other: WritingRun): boolean =>
  one.machine === other.machine && one.pid === other.pid;

export const isOnThisMachine = ({ machine }: WritingRun): boolean => machine === thisMachine;

/**
 * Whether another process of this number is at work on this machine: signal 0 asks, and only someone else's may not be asked.
 * What bears this process's own number when it begins was left by one before it.
 */
export function isAtWork(pid: number): boolean {
  if (pid === process.pid) return false;
  try {
    return process.kill(pid, 0);
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}
