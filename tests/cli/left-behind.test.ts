import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { writeFiles } from '../../cli/write-files.ts';

const folders: string[] = [];
const folder = async (): Promise<string> => {
  const made = await mkdtemp(join(tmpdir(), 'bodkin-'));
  folders.push(made);
  return made;
};
afterEach(async () => {
  for (const made of folders.splice(0)) await rm(made, { recursive: true });
});

/** No process has this number. */
const dead = 2 ** 22 + 1;

describe('a folder after a run that was killed', () => {
  it('keeps the old set where the new one was not whole', async () => {
    const out = await folder();
    await writeFile(join(out, 'sheet.svg'), 'old');
    await writeFile(join(out, `.sheet.svg.${dead}.part`), 'ne');
    await writeFiles(out, new Map([['other.txt', 'x']]));
    expect((await readdir(out)).toSorted()).toEqual(['other.txt', 'sheet.svg']);
    expect(await readFile(join(out, 'sheet.svg'), 'utf8')).toBe('old');
  });

  it('has the whole new set where that had begun to take its names', async () => {
    const out = await folder();
    await writeFile(join(out, 'sheet.svg'), 'new');
    await writeFile(join(out, 'report.json'), 'old');
    await writeFile(join(out, `.report.json.${dead}.part`), 'new');
    await writeFile(join(out, `.bodkin.${dead}.swap`), 'sheet.svg\nreport.json\n../up');
    await writeFiles(out, new Map([['other.txt', 'x']]));
    expect((await readdir(out)).toSorted()).toEqual(['other.txt', 'report.json', 'sheet.svg']);
    expect(await readFile(join(out, 'report.json'), 'utf8')).toBe('new');
  });

  it('keeps what a run still at work has written', async () => {
    const out = await folder();
    const name = `.sheet.svg.${process.ppid}.part`;
    await writeFile(join(out, name), 'half');
    await writeFiles(out, new Map([['other.txt', 'x']]));
    expect(await readdir(out)).toContain(name);
  });
});

describe('a folder that cannot be made', () => {
  it('is told at once, in a file system that makes none', async () => {
    await expect(writeFiles('/proc/self/none', new Map([['a', 'b']]))).rejects.toThrow();
  });
});
