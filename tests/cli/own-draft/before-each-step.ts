import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';

/** Calls that change a file system. */
const changing = [
  'mkdirSync',
  'linkSync',
  'symlinkSync',
  'renameSync',
  'rmSync',
  'writeFileSync',
  'writeFile',
  'mkdir',
  'rm',
] as const;

/** Has each step of this process that would change the file system tell beforehand how many it is, its name and what it is given. */
export function beforeEachStep(
  tell: (step: number, name: string, given: readonly unknown[]) => void,
): () => number {
  let steps = 0;
  for (const where of [fs, fs.promises])
    for (const name of changing) {
      const own: unknown = Reflect.get(where, name);
      if (typeof own !== 'function') continue;
      Reflect.set(where, name, (...given: unknown[]) => {
        tell(++steps, name, given);
        return Reflect.apply(own, where, given);
      });
    }
  syncBuiltinESMExports();
  return () => steps;
}
