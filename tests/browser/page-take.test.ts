import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { unzipSync } from 'fflate';
import { expect, test } from 'vitest';
import { garments } from '../../drafts/index.ts';
import { bodkin } from '../cli/session.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';
import { browsed, download, inBrowser, invented, view } from './opened-page.ts';

/* What the page hands over, held to what the command line writes. */

const folder = temporaryFolder();
const lady = fileURLToPath(new URL('../../measurements/leading-lady.yaml', import.meta.url));

const understudy = fileURLToPath(new URL('../../measurements/understudy.yaml', import.meta.url));

const { opened } = browsed();

const command = async (...words: readonly string[]): Promise<void> => {
  const { code, err } = await bodkin(words, { garments: Object.values(garments) });
  expect(code, err).toBe(0);
};

inBrowser('what is taken from the page', () => {
  test('is to the byte what the command line writes, singly and in a ZIP', async () => {
    const { page, faults } = await opened();
    await invented(page, 'Leading lady');
    await view(page, 'Take');
    const out = folder.at('out');
    const of = ['dress', '--body', lady];
    await command('draft', ...of, '--out', out, '--also', 'dxf', '--also', 'dxf-curves');
    await command('print', ...of, '--paper', 'a4', '--out', join(out, 'dress-a4.pdf'));
    await command('print', ...of, '--paper', 'projector', '--out', join(out, 'dress-projector.pdf'));
    await command('sew', ...of, '--out', out);
    await command('teach', ...of, '--out', out);
    const same = async (name: string, bytes: Uint8Array): Promise<void> =>
      expect(Buffer.compare(Buffer.from(bytes), await readFile(join(out, name))), name).toBe(0);
    for (const button of ['dress-a4.pdf', 'sewing.pdf', 'cutting.dxf', 'report.json']) {
      const { name, bytes } = await download(page, button);
      expect(name).toBe(button);
      await same(name, bytes);
    }
    const zip = await download(page, 'Take it as one ZIP');
    expect(zip.name).toBe('dress-for-leading-lady.zip');
    const { 'leading-lady.yaml': body, ...files } = unzipSync(zip.bytes);
    expect(Object.keys(files).toSorted()).toEqual((await readdir(out)).toSorted());
    for (const [name, bytes] of Object.entries(files)) await same(name, bytes);
    // Her measurements as the page writes them draft the same dress.
    const written = await folder.file('leading-lady.yaml', Buffer.from(body ?? []).toString());
    await command('draft', 'dress', '--body', written, '--out', folder.at('again'));
    await same('report.json', await readFile(folder.at('again/report.json')));
    const again = await download(page, 'Take it as one ZIP');
    expect(Buffer.compare(zip.bytes, again.bytes)).toBe(0);
    expect(faults).toEqual([]);
  }, 300_000);

  test.each([
    ['Letter', 'letter'],
    ['A0', 'a0'],
    ['a roll', 'roll:914'],
  ])(
    'is to the byte what the command line prints on %s',
    async (title, paper) => {
      const { page, faults } = await opened();
      await invented(page, 'Understudy');
      await view(page, 'Take');
      await page.getByLabel('Paper', { exact: true }).selectOption(title);
      if (title === 'a roll') await page.getByLabel('wide, in mm').fill('914');
      const { name, bytes } = await download(page, `dress-${paper.replace(':', '-')}.pdf`);
      const out = folder.at(name);
      await command('print', 'dress', '--body', understudy, '--paper', paper, '--out', out);
      expect(Buffer.compare(bytes, await readFile(out))).toBe(0);
      expect(faults).toEqual([]);
    },
    120_000,
  );

  test('is refused in words where the paper is none', async () => {
    const { page } = await opened();
    await invented(page, 'Understudy');
    await view(page, 'Take');
    await page.getByLabel('Paper', { exact: true }).selectOption('a roll');
    await page.getByLabel('wide, in mm').fill('20');
    await page.getByRole('button', { name: 'dress-roll-20.pdf' }).click();
    await page.getByText('A roll should be 250 to 1700 mm wide.').waitFor();
  });
});
