import { readFileSync } from 'node:fs';
import os from 'node:os';
import { beforeEachStep } from '../own-draft/before-each-step.ts';

/*
 * Writes the set of files that a file of JSON holds into a folder, as a run of another machine, and stands still before the
 * step of this number that would change the file system, until it is woken: node asleep-while-writing.mjs FOLDER FILES STEP.
 */
const [folder = '', files = '', step = '0'] = process.argv.slice(2);
const set = new Map<string, string>(Object.entries(JSON.parse(readFileSync(files, 'utf8'))));
os.hostname = () => 'costume-shop';
const steps = beforeEachStep((at) => {
  if (at === Number(step)) process.kill(process.pid, 'SIGSTOP');
});
const { writeFiles } = await import('../../../cli/files/write-files.ts');
await writeFiles(folder, set);
process.stdout.write(String(steps()));
