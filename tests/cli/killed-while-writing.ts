import fs, { readFileSync } from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';
import { join } from 'node:path';
import { writeFiles } from '../../cli/write-files.ts';

/*
 * Writes the set of files that a file of JSON holds into a folder, and is killed before the step of this number that would
 * change the file system: node killed-while-writing.mjs FOLDER FILES STEP LINKS. With `none` the file system has no links, with
 * `held` moreover another program has the file b.svg there open, so that it cannot be moved.
 */
const [folder = '', files = '', step = '0', links = 'links'] = process.argv.slice(2);
let steps = 0;
const killed = (): void => {
  if (++steps === Number(step)) process.kill(process.pid, 'SIGKILL');
};
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
  ]) {
    const own: unknown = Reflect.get(where, name);
    if (typeof own !== 'function') continue;
    Reflect.set(where, name, (...given: unknown[]) => {
      killed();
      const [from] = given;
      const isLink = links !== 'links' && /link/.test(name);
      const isHeld = links === 'held' && name === 'renameSync' && from === join(folder, 'b.svg');
      if (isLink || isHeld) throw Object.assign(new Error('not permitted'), { code: 'EPERM' });
      return Reflect.apply(own, where, given);
    });
  }
const set = new Map<string, string>(Object.entries(JSON.parse(readFileSync(files, 'utf8'))));
syncBuiltinESMExports();
await writeFiles(folder, set);
process.stdout.write(String(steps));
