import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { writeFiles } from '../../../cli/files/write-files.ts';
import { beforeEachStep } from '../own-draft/before-each-step.ts';

/*
 * Writes the set of files that a file of JSON holds into a folder, and is killed before the step of this number that would
 * change the file system: node killed-while-writing.mjs FOLDER FILES STEP LINKS. With `none` the file system has no links, with
 * `held` moreover another program has the file b.svg there open, so that it cannot be moved.
 */
const [folder = '', files = '', step = '0', links = 'links'] = process.argv.slice(2);
const set = new Map<string, string>(Object.entries(JSON.parse(readFileSync(files, 'utf8'))));
const steps = beforeEachStep((at, name, [from]) => {
  if (at === Number(step)) process.kill(process.pid, 'SIGKILL');
  const isLink = links !== 'links' && /link/.test(name);
  const isHeld = links === 'held' && name === 'renameSync' && from === join(folder, 'b.svg');
  if (isLink || isHeld) throw Object.assign(new Error('not permitted'), { code: 'EPERM' });
});
await writeFiles(folder, set);
process.stdout.write(String(steps()));
