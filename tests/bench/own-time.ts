import { readFileSync } from 'node:fs';

const schedule = `/proc/self/task/${process.pid}/schedstat`;

/**
 * Milliseconds of a processor that this thread has had. What others take of it meanwhile does not count, so that a busy machine
 * gives nearly the figures of a quiet one; nor does what V8 does on threads of its own, compiling and part of collecting garbage
 * (`--single-threaded-gc` makes it do that here). Time by the clock where the system does not tell (it is asked as Linux is).
 */
export function ownTime(): number {
  try {
    // The schedule is brought up to date only when somebody asks for all of the process.
    process.cpuUsage();
    return Number(readFileSync(schedule, 'latin1').split(' ', 1)[0]) / 1e6;
  } catch {
    return performance.now();
  }
}
