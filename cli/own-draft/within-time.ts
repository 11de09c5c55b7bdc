import { Script } from 'node:vm';

/** Code that was ended because it ran too long. */
export class Endless extends Error {}

/** By this name the script below finds what it is to call. */
const CALLED = Symbol.for('bodkin.called');

/** A script may be ended from without, and with it all that it calls; a function alone may not. */
const call = new Script(`globalThis[Symbol.for('bodkin.called')]()`, { filename: 'within-time' });

/**
 * What a function gives, if it gives it within so many milliseconds; throws `Endless` where it does not, and what it throws
 * itself. It must not be one that waits for anything. Takes a tenth of a millisecond more than the function.
 */
export function withinTime<T>(act: () => T, limit: number): T {
  const before: unknown = Reflect.get(globalThis, CALLED);
  Reflect.set(globalThis, CALLED, act);
  try {
    return call.runInThisContext({ timeout: limit }) as T;
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ERR_SCRIPT_EXECUTION_TIMEOUT')
      throw new Endless(
        `The draft ran for ${limit / 1000} seconds and came to no end. Does a loop in it never end?`,
      );
    throw error;
  } finally {
    Reflect.set(globalThis, CALLED, before);
  }
}
