import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { browsed, drawn, inBrowser, invented, view, viewTitles } from './opened-page.ts';

/* What is found is said in the names of the page, with what can be done about it, and every view has its link. */

const { opened } = browsed();

inBrowser('what is found of a measurement', () => {
  test('is said in every view by the name of its field, leads there, and lets it stand at one press', async () => {
    const { page, faults } = await opened();
    // As if two digits of 74 had changed places.
    for (const [name, text] of [
      ['Bust girth', '92'],
      ['Waist girth', '47'],
      ['Hip girth', '98'],
      ['Back neck point to waist', '41'],
    ] as const)
      await page.getByLabel(name, { exact: true }).fill(text);
    await page.getByText(/^One thing stands|things stand/).waitFor();
    await view(page, 'Pieces');
    await page
      .getByText(/tick “Taken twice: let it stand”/)
      .first()
      .waitFor();
    expect(await page.locator('main').textContent()).not.toMatch(/sure:|waistGirth/);
    await page.getByRole('button', { name: 'To the waist girth' }).first().click();
    await page.getByRole('heading', { level: 1, name: 'Measure' }).waitFor();
    await expect.poll(() => page.locator(':focus').getAttribute('id')).toBe('waistGirth');
    await view(page, 'Pieces');
    await page
      .getByRole('button', { name: /^Taken twice: let it stand.*waist girth/ })
      .first()
      .click();
    await expect.poll(() => page.getByRole('button', { name: /Taken twice/ }).count()).toBe(0);
    await view(page, 'Measure');
    const field = page.locator('.field').filter({ has: page.locator('#waistGirth') });
    expect(await field.getByRole('checkbox').isChecked()).toBe(true);
    expect(faults).toEqual([]);
  }, 60_000);

  test('that is a choice leads to that choice', async () => {
    const { page } = await opened();
    await invented(page, 'Understudy');
    await view(page, 'Choose');
    await page.getByLabel('Strap width', { exact: true }).fill('900');
    await page.getByText('this draft takes').first().waitFor();
    await view(page, 'Pieces');
    await page
      .getByText(/Strap width is 900 mm|strap width is 900 mm/)
      .first()
      .waitFor();
    await page.getByRole('button', { name: 'To the strap width' }).first().click();
    await expect.poll(() => page.locator(':focus').getAttribute('id')).toBe('strapWidth');
  }, 60_000);
});

/** Waits until it is this view that stands there. */
const shown = (page: Page, name: string) =>
  page.getByRole('link', { name, exact: true }).and(page.locator('[aria-current]')).waitFor();

inBrowser('a link', () => {
  test('is there in every view, and opens that view with the choices', async () => {
    const { page } = await opened();
    await invented(page, 'Understudy');
    await view(page, 'Choose');
    await page.getByLabel('Strap width', { exact: true }).fill('40');
    await drawn(page, 'dress');
    const links: string[] = [];
    for (const name of viewTitles) {
      await view(page, name);
      await shown(page, name);
      if (name === viewTitles[0]) await page.getByText('A link to this').click();
      links.push(await page.getByLabel('The link', { exact: true }).inputValue());
    }
    for (const link of links) expect(link).not.toMatch(/Girth/);
    for (const at of [2, 4, 7]) {
      const other = await opened({}, links[at]?.split('/').slice(3).join('/') ?? '');
      await shown(other.page, viewTitles[at] ?? '');
      await view(other.page, 'Choose');
      expect(await other.page.getByLabel('Strap width', { exact: true }).inputValue()).toBe('40');
    }
  }, 120_000);
});
