import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { garments } from '../../drafts/index.ts';
import { bodkin } from '../cli/session.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';
import { barriers, browsed, download, drawn, inBrowser, invented, view } from './opened-page.ts';

const folder = temporaryFolder();
const { opened } = browsed();

async function measure(page: Page, sizes: Readonly<Record<string, string>>): Promise<void> {
  for (const [label, text] of Object.entries(sizes)) await page.getByLabel(label, { exact: true }).fill(text);
}

const four = {
  'Bust girth': '36 1/4',
  'Waist girth': '29',
  'Hip girth': '39',
  'Back neck point to waist': '15 7/8',
};

const command = (words: readonly string[]) => bodkin(words, { garments: Object.values(garments) });

inBrowser('a dressmaker', () => {
  test('comes from the empty form to the very files that the command line writes', async () => {
    const { page, faults } = await opened();
    await page.getByText('Nothing is measured yet.').waitFor();
    await page.getByLabel('Name or role').fill('wardrobe apprentice');
    await page.getByLabel('inches', { exact: true }).check();
    await measure(page, { ...four, 'Waist girth': 'wide' });
    await page.getByText('wide is no number for the waist girth').waitFor();
    await measure(page, four);
    await page
      .getByText(/^Estimated .* give or take/)
      .first()
      .waitFor();
    await view(page, 'Choose');
    await page.getByLabel('plain', { exact: true }).first().check();
    await page.getByLabel('Waist ease', { exact: true }).fill('1 1/4');
    await page.getByRole('slider', { name: /^Strap width/ }).press('ArrowRight');
    await drawn(page, 'dress');
    await view(page, 'Take');
    await page.getByRole('button', { name: 'sheet.svg' }).waitFor();
    const taken = [await download(page, 'sheet.svg'), await download(page, 'report.json')];
    const body = await download(page, 'Save as YAML');
    expect(body.name).toBe('wardrobe-apprentice.yaml');
    const { styling } = JSON.parse(taken[1]?.text ?? '');
    expect(styling).toMatchObject({ front: 'plain', waistEase: 31.75 });
    const file = await folder.file(body.name, body.text);
    const sets = ['front', 'waistEase', 'strapWidth'].flatMap((name) => [
      '--set',
      `${name}=${styling[name]}`,
    ]);
    const { code, err } = await command([
      'draft',
      'dress',
      '--body',
      file,
      '--out',
      folder.at('out'),
      ...sets,
    ]);
    expect(code, err).toBe(0);
    for (const { name, text } of taken)
      expect(text === (await readFile(join(folder.at('out'), name), 'utf8')), name).toBe(true);
    expect(faults).toEqual([]);
  });

  test('finds all as it was after a reload, and nothing once it is deleted', async () => {
    const { page, faults } = await opened();
    await page.getByLabel('inches', { exact: true }).check();
    await measure(page, four);
    await view(page, 'Choose');
    await page.getByRole('radio', { name: /^Skirt/ }).check();
    await drawn(page, 'skirt');
    await page.reload();
    await drawn(page, 'skirt');
    await view(page, 'Measure');
    expect(await page.getByLabel('Bust girth', { exact: true }).inputValue()).toBe('36 1/4');
    await page.getByRole('button', { name: 'Delete all that is kept' }).click();
    await page.reload();
    await page.getByText('Nothing is measured yet.').waitFor();
    expect(await page.getByLabel('Bust girth', { exact: true }).inputValue()).toBe('');
    expect(faults).toEqual([]);
  });

  test('opens a file, is told what is wrong with another, and can go back', async () => {
    const { page, faults } = await opened();
    const file = (name: string, text: string) =>
      page
        .locator('input[type=file]')
        .setInputFiles({ name, mimeType: 'text/plain', buffer: Buffer.from(text) });
    await invented(page, 'Prompter');
    const waist = await page.getByLabel('Waist girth', { exact: true }).inputValue();
    await file('slip.yaml', 'units: cm\nbustGirth:92');
    await page.getByText('slip.yaml, line 2').waitFor();
    await file('script.yaml', 'name: "<img src=x onerror=alert(1)>"\nunits: cm\nwaistGirth: 70\nhipp: 90');
    await page.getByText('There is no measurement called hipp').waitFor();
    await page.getByRole('button', { name: /^Leave out/ }).click();
    await page.getByText('There is no measurement called hipp').waitFor({ state: 'detached' });
    expect(await page.getByLabel('Waist girth', { exact: true }).inputValue()).toBe('70');
    await page.getByRole('button', { name: 'Back to what was there' }).click();
    expect(await page.getByLabel('Waist girth', { exact: true }).inputValue()).toBe(waist);
    expect(faults).toEqual([]);
  });

  test('has the last drawing still in sight while something stands in the way of the next', async () => {
    const { page } = await opened();
    await invented(page, 'Understudy');
    await view(page, 'Choose');
    await page.getByLabel('Strap width', { exact: true }).fill('900');
    await page
      .getByText(/this draft takes 20 to 60 mm/)
      .first()
      .waitFor();
    await page.getByRole('img', { name: /^Piece 1,/ }).waitFor();
    await view(page, 'Take');
    expect(await page.getByRole('button', { name: 'sheet.svg' }).count()).toBe(0);
  });

  test('sees of the last drawing what she had not looked at before something stood in the way', async () => {
    const { page, faults } = await opened();
    await invented(page, 'Understudy');
    await page.getByLabel('Waist girth', { exact: true }).fill('wide');
    await page.getByText('wide is no number for the waist girth').waitFor();
    await view(page, 'Pieces');
    await page.getByText('This is the last that could be drawn.').waitFor();
    await page.getByRole('img', { name: /^Piece 1,/ }).waitFor();
    await page.getByText('Edges of the side front', { exact: true }).click();
    await page.getByRole('button', { name: 'armhole underarm', exact: true }).first().click();
    await page.getByRole('button', { name: 'Walk it' }).waitFor();
    await view(page, 'Learn');
    await page.locator('.sentence').waitFor();
    expect(faults).toEqual([]);
  });

  test('is told what stands in the way of the first drawing, whichever view would show it', async () => {
    const { page, faults } = await opened();
    for (const [name, text] of [
      ['Bust girth', '92'],
      ['Waist girth', '74'],
      ['Hip girth', '99'],
      ['Back neck point to waist', '405'],
    ] as const)
      await page.getByLabel(name, { exact: true }).fill(text);
    for (const name of ['Choose', 'Pieces']) {
      await view(page, name);
      await page.getByText('Nothing could be drawn yet. What stands in the way:').waitFor();
      await page
        .getByText(/back neck point to waist/i)
        .first()
        .waitFor();
    }
    expect(await barriers(page)).toEqual([]);
    expect(faults).toEqual([]);
  });

  test('has her numbers turned into another unit, where she asks for that', async () => {
    const { page, faults } = await opened();
    await invented(page, 'Leading lady');
    await page.getByLabel('inches', { exact: true }).check();
    await page.getByText('One thing stands in the way of the dress.').waitFor();
    await page.getByRole('button', { name: 'They were in cm: turn them into inches' }).click();
    await drawn(page, 'dress');
    expect(await page.getByLabel('Bust girth', { exact: true }).inputValue()).toBe('36 1/4');
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('button', { name: 'Undo' }).click();
    await drawn(page, 'dress');
    expect(await page.getByLabel('Bust girth', { exact: true }).inputValue()).toBe('92');
    expect(faults).toEqual([]);
  });

  test('needs nothing but the keyboard', async () => {
    const { page } = await opened();
    const reach = async (name: string): Promise<void> => {
      for (let i = 0; i < 60; i++) {
        await page.keyboard.press('Tab');
        const at = page.locator(':focus');
        if (
          (await at.count()) > 0 &&
          ((await at.getAttribute('id')) === name || (await at.textContent()) === name)
        )
          return;
      }
      throw new Error(`${name} is not reached`);
    };
    await reach('bustGirth');
    await page.keyboard.type('92');
    await reach('waistGirth');
    await page.keyboard.type('74');
    await reach('hipGirth');
    await page.keyboard.type('99');
    await reach('backNeckPointToWaist');
    await page.keyboard.type('40.5');
    await drawn(page, 'dress');
    await page.reload();
    await reach('Pieces');
    await page.keyboard.press('Enter');
    await page.getByLabel('Show', { exact: true }).focus();
    await page.keyboard.type('2 side front');
    await reach('Larger');
    await page.keyboard.press('Tab');
    const seen = async (): Promise<number[]> =>
      (await page.locator('.pane svg').getAttribute('viewBox'))?.split(' ').map(Number) ?? [];
    const [left = 0, , width = 0] = await seen();
    await page.keyboard.press('+');
    await expect.poll(async () => (await seen())[2]).toBeCloseTo(width / 1.3, 1);
    await page.keyboard.press('ArrowRight');
    await expect.poll(async () => (await seen())[0]).toBeGreaterThan(left + width * 0.2);
    await page.keyboard.press('0');
    await expect.poll(async () => (await seen())[2]).toBeCloseTo(width, 1);
    await reach('armhole underarm');
    await page.keyboard.press('Enter');
    await reach('Walk it');
    await page.keyboard.press('Enter');
    await page.getByRole('slider', { name: 'Walked' }).focus();
    for (let i = 0; i < 5; i++) await page.keyboard.press('ArrowRight');
    await page.locator('.rolling').waitFor();
  });
});
