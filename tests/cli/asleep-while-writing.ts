import fs, { readFileSync } from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';
import os from 'node:os';

/*
 * Writes the set of files that a file of JSON holds into a folder, as a run of another machine, and stands still before the
 * step of this number that would change the file system, until it is woken: node asleep-while-writing.mjs FOLDER FILES STEP.
 */
const [folder = '', files = '', step = '0'] = process.argv.slice(2);
const set = new Map<string, string>(Object.entries(JSON.parse(readFileSync(files, 'utf8'))));
let steps = 0;
for (const where of [fs, fs.promises])
  for (const name of [
    'mkdirSync',
    'linkSync',
    'symlinkSync',
    'renameSync',
    'rmSync',
    'writeFileSync',
    'writeFile',
    'mkdir',
    'rm',
  ]) {
    const own: unknown = Reflect.get(where, name);
    if (typeof own !== 'function') continue;
    Reflect.set(where, name, (...given: unknown[]) => {
      if (++steps === Number(step)) process.kill(process.pid, 'SIGSTOP');
      return Reflect.apply(own, where, given);
    });
  }
os.hostname = () => 'costume-shop';
syncBuiltinESMExports();
const { writeFiles } = await import('../../cli/write-files.ts');
await writeFiles(folder, set);
process.stdout.write(String(steps));
