import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { filesJoined } from '../../cli/own-draft/draft-files.ts';
import { garments } from '../../drafts/index.ts';
import { bodkin } from '../cli/session.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';
import { drawing, number, openDraft, telling, toStep, withSkirt, write } from './draft-page.ts';
import { barriers, beyondSide, browsed, inBrowser, view } from './opened-page.ts';

/* Learning from a draft and changing it, on the page as `npm run build` leaves it, in a real browser. */

const lady = new URL('../../measurements/leading-lady.yaml', import.meta.url).pathname;
const folder = temporaryFolder();
const browser = browsed();

/** What the construction drawing consists of, as path data. */
const lines = (page: Page, kind: string): Promise<string[]> =>
  page.evaluate(
    `[...document.querySelectorAll('.construction .${kind} path:not(.touch)')].map((path) => path.getAttribute('d'))`,
  );

inBrowser('a teacher', () => {
  test('comes from a rule to a changed draft that is held to everybody, and that the command line takes', async () => {
    const { page, faults } = await withSkirt(browser);
    await view(page, 'Learn');
    await toStep(page, 'Waist of the front half');
    await number(page, '10').click();
    await page.getByRole('heading', { name: 'Rule K8, 10 mm' }).waitFor();
    await page.getByText(/half the front is this much wider than half the back/i).waitFor();
    await page.getByLabel('Turn it').fill('14');
    await page.getByLabel('Turn it').press('Enter');
    await page.getByText(/steps have moved; the lines as they were/).waitFor();
    const [now, before] = [await lines(page, 'lit'), await lines(page, 'under')];
    expect(now.length).toBeGreaterThan(0);
    expect(before.length).toBeGreaterThan(0);
    expect(before.some((line) => now.includes(line))).toBe(false);
    await page.getByRole('button', { name: 'Write it into the code' }).click();
    await page.getByRole('heading', { name: 'Change the code' }).waitFor();
    await expect.poll(() => page.getByLabel('File', { exact: true }).inputValue()).toBe('skirt/rules.ts');
    await page.locator('.cm-deletedChunk', { hasText: '10,' }).waitFor();
    await drawing(page).getByRole('img').waitFor();
    await page.getByRole('button', { name: 'Hold it to everybody' }).click();
    await page.getByText('All 53 drawn, every one true.').waitFor({ timeout: 60_000 });
    await page.locator('main details.files summary').click();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as a file' }).click(),
    ]);
    expect(download.suggestedFilename()).toBe('my-skirt.ts');
    const text = await readFile(await download.path(), 'utf8');
    const rules = filesJoined(text, '').find(({ name }) => name === 'skirt/rules.ts')?.text;
    expect(rules).toMatch(/sideBalance: \[\s*14,/);
    // The command line draws what the page does: its own skirt otherwise.
    const file = await folder.file(
      'my-skirt.ts',
      text.replace("name: 'skirt',\n  title", "name: 'my-skirt',\n  title"),
    );
    const steps = async (words: readonly string[]) => {
      const out = folder.at('out');
      const session = { garments: Object.values(garments) };
      const {
        code,
        out: said,
        err,
      } = await bodkin([...words, '--body', lady, '--out', out, '--steps', '--json'], session);
      expect(code, err).toBe(0);
      return JSON.parse(said).steps.map((step: { readonly text: string }) => step.text);
    };
    const [changed, own] = [
      await steps(['--draft', file, 'draft', 'my-skirt']),
      await steps(['draft', 'skirt']),
    ];
    expect(changed).toContain('(half waist 385 + 14) / 2 = 199.5 mm');
    expect(own).toContain('(half waist 385 + 10) / 2 = 197.5 mm');
    // And the page opens it again, but asks first.
    await openDraft(page, 'my-skirt.ts', text);
    expect(await page.getByLabel('File', { exact: true }).locator('option').count()).toBe(
      filesJoined(text, '').length,
    );
    await page.getByText('Nothing of it has been run yet.', { exact: true }).waitFor();
    await page.getByRole('button', { name: 'Run it', exact: true }).click();
    await drawing(page).getByRole('img').waitFor();
    expect(faults).toEqual([]);
  }, 120_000);

  test('sees where a number comes from, and what it measures on the drawing', async () => {
    const { page, faults } = await withSkirt(browser);
    await view(page, 'Learn');
    await toStep(page, 'Waist of the side front gore');
    await page.locator('.sentence button').last().click();
    await page.getByText('On the drawing it is the length that is marked.').waitFor();
    expect(await page.locator('.construction .measured').count()).toBe(1);
    await page.locator('.sentence button').nth(1).click();
    await page.getByRole('button', { name: /^To step/ }).click();
    await page.getByRole('heading', { name: 'Waist of the front half' }).waitFor();
    // By keys alone, as soon as it is opened: on and back; in the step to the end and to the beginning too.
    await view(page, 'Pieces');
    await view(page, 'Learn');
    const at = (await page.getByText(/step \d+ of/).textContent()) ?? '';
    await page.keyboard.press('ArrowRight');
    await page.getByText(at).waitFor({ state: 'detached' });
    await page.keyboard.press('ArrowLeft');
    await page.getByText(at).waitFor();
    await page.getByRole('region', { name: /^The step/ }).focus();
    await page.keyboard.press('Home');
    await page.getByText(/step 1 of/).waitFor();
    await page.keyboard.press('ArrowRight');
    await page.getByText(/step 2 of/).waitFor();
    await page.keyboard.press('ArrowLeft');
    await page.getByText(/step 1 of/).waitFor();
    await page.keyboard.press('End');
    await page.getByText(/step (\d+) of \1/).waitFor();
    expect(faults).toEqual([]);
  });

  test('sees the step that the cursor is in on the drawing, also where it draws nothing itself', async () => {
    const { page, faults } = await withSkirt(browser);
    await view(page, 'Change the code');
    await drawing(page).getByRole('img').waitFor();
    await page.getByLabel('File', { exact: true }).selectOption('skirt/skirt.ts');
    await page.locator('.cm-content').focus();
    await page.keyboard.press('Control+F');
    await page.keyboard.type('Waist of the centre front gore');
    await page.keyboard.press('Enter');
    await page.keyboard.press('Escape');
    // A length of the drawing is marked.
    await drawing(page)
      .getByText(/^\d+\. Waist of the centre front gore:/)
      .waitFor();
    await drawing(page).locator('.construction .measured').waitFor();
    expect(await drawing(page).locator('.construction .lit').count()).toBe(0);
    expect(faults).toEqual([]);
  });

  test('prints the lesson whole', async () => {
    const { page } = await withSkirt(browser);
    await view(page, 'Learn');
    await page.locator('.sentence').waitFor();
    await page.emulateMedia({ media: 'print' });
    await page.evaluate(`dispatchEvent(new Event('beforeprint'))`);
    await page.locator('.printed-step').first().waitFor();
    const steps = await page.getByText(/step 1 of/).textContent();
    expect(await page.locator('.printed-step').count()).toBe(Number(/of (\d+)/.exec(steps ?? '')?.[1]));
    await page.evaluate(`dispatchEvent(new Event('afterprint'))`);
    await page.locator('.printed-step').first().waitFor({ state: 'detached' });
  });

  test('begins a draft of her own from the belt, breaks it, and is told whom it fails and where', async () => {
    const { page, faults } = await withSkirt(browser);
    await view(page, 'Change the code');
    await page.locator('main details.files summary').click();
    await page.getByRole('button', { name: 'New draft from the belt of the lesson' }).click();
    await drawing(page)
      .getByRole('img', { name: /^Shaped belt/ })
      .waitFor();
    const belt = await page.evaluate<string>(
      `fetch('drafts.json').then((all) => all.json()).then(({ belt }) => belt)`,
    );
    // A step that the cursor is in is told beside the drawing.
    await page.locator('.cm-content').focus();
    await page.keyboard.press('Control+F');
    await page.keyboard.type('Half belt, top');
    await page.keyboard.press('Enter');
    await page.keyboard.press('Escape');
    await drawing(page)
      .getByText(/^1\. Half belt, top/)
      .waitFor();
    // Too wide for those whose hips are narrow.
    await write(
      page,
      belt.replace(
        "isLong('the top is half the waist', [upper], top.value)",
        "isLong('the top is half the waist', [upper], top.value > 420 ? top.value + 3 : top.value)",
      ),
    );
    await page.getByRole('button', { name: 'Run', exact: true }).click();
    await page.getByRole('button', { name: 'Hold it to everybody' }).click();
    await page.getByText(/^All 53 drawn; \d+ of them fail\.$/).waitFor({ timeout: 60_000 });
    await page.getByRole('heading', { name: 'Whom it fails' }).waitFor();
    expect(await page.locator('.everybody .ill').count()).toBeGreaterThan(5);
    expect(await page.locator('.everybody .well').count()).toBeGreaterThan(5);
    // And all is there tomorrow.
    await page.reload();
    await drawing(page)
      .getByRole('img', { name: /^Shaped belt/ })
      .waitFor();
    expect(await page.evaluate(`localStorage.getItem('bodkin')`)).toContain('top.value > 420');
    expect(faults).toEqual([]);
  }, 120_000);
});

inBrowser.each([
  [360, 'light'],
  [1600, 'dark'],
] as const)('Learn and Change the code, %i pixels wide and %s', (width, colorScheme) => {
  test('have nothing that axe-core finds, and nothing beside the screen', async () => {
    const { page, faults } = await withSkirt(browser, { viewport: { width, height: 800 }, colorScheme });
    const look = async (name: string): Promise<void> => {
      expect(await barriers(page), name).toEqual([]);
      expect(await beyondSide(page), name).toBeLessThanOrEqual(0);
    };
    await view(page, 'Learn');
    await page.locator('.sentence').waitFor();
    await look('Learn');
    await toStep(page, 'Waist of the front half');
    await number(page, '10').click();
    await page.getByLabel('Turn it').fill('14');
    await page.getByLabel('Turn it').press('Enter');
    await page.getByText(/steps have moved/).waitFor();
    await look('Learn, a rule turned');
    await page.getByRole('button', { name: 'Write it into the code' }).click();
    await drawing(page).getByRole('img').waitFor();
    await look('Change the code, the difference');
    await page.getByRole('button', { name: 'Difference' }).click();
    await page.getByRole('button', { name: 'Hold it to everybody' }).click();
    await page.getByText(/^All 53/).waitFor({ timeout: 60_000 });
    await look('Change the code, held');
    await page.locator('main details.files summary').click();
    await write(page, 'nonsense nonsense');
    await drawing(page).getByText('Not so:').first().waitFor();
    await look('Change the code, broken');
    await openDraft(page, 'strange.ts', telling(''));
    await look('Change the code, a stranger’s');
    expect(faults).toEqual([]);
  }, 120_000);
});
