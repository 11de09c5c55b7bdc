import { expect, test } from 'vitest';
import { browsed, drawn, inBrowser, invented, view } from './opened-page.ts';

/* Ways in and out of the page that are the browser's own. */

const { opened, address } = browsed();

inBrowser('the page', () => {
  test('is gone through view by view by the browser’s way back and on, to the very first', async () => {
    const { page, faults } = await opened();
    await invented(page, 'Understudy');
    const names = ['Measure', 'Choose', 'Pieces', 'Learn'];
    const stands = (name: string | undefined) =>
      page.getByRole('heading', { level: 1, name: name ?? '', exact: true }).waitFor();
    for (const name of names.slice(1)) {
      await view(page, name);
      await stands(name);
    }
    for (const name of names.toReversed().slice(1)) {
      await page.goBack();
      await stands(name);
    }
    for (const name of names.slice(1)) {
      await page.goForward();
      await stands(name);
    }
    // And from elsewhere.
    await page.goto('about:blank');
    await page.goBack();
    await stands('Learn');
    await page.locator('.sentence').waitFor();
    await view(page, 'Choose');
    await page.getByLabel('Strap width', { exact: true }).fill('31');
    await drawn(page, 'dress');
    expect(faults).toEqual([]);
  });

  test('that is open twice keeps what was done last, and what was deleted on one stays deleted', async () => {
    const { page: first, faults } = await opened();
    const name = (page: typeof first) => page.getByLabel('Name or role');
    const kept = (page: typeof first) => page.evaluate<string | null>(`localStorage.getItem('bodkin')`);
    await invented(first, 'Understudy');
    await expect.poll(() => kept(first)).toContain('understudy');
    const second = await first.context().newPage();
    await second.goto(address());
    await drawn(second, 'dress');
    await name(second).fill('second understudy');
    await expect.poll(() => kept(second)).toContain('second understudy');
    // The other is closed after it, or loaded again.
    await first.reload();
    expect(await name(first).inputValue()).toBe('second understudy');
    await second.getByRole('button', { name: 'Delete all that is kept' }).click();
    await first.close({ runBeforeUnload: true });
    await second.reload();
    await second.getByText('Nothing is measured yet.').waitFor();
    expect(await kept(second)).toBeNull();
    expect(faults).toEqual([]);
  });

  test.each([
    ['is full', `Storage.prototype.setItem = () => { throw new DOMException('', 'QuotaExceededError'); }`],
    [
      'is refused',
      `Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('', 'SecurityError'); } })`,
    ],
  ])(
    'says that it keeps nothing where the browser’s store %s, and drafts all the same',
    async (_, before) => {
      const { page, faults } = await opened();
      await page.addInitScript(before);
      await page.reload();
      await page.getByText('What you type is kept in this browser').waitFor();
      await invented(page, 'Understudy');
      await page.getByText('This browser could not keep what you typed').waitFor();
      expect(await page.getByText('What you type is kept in this browser').count()).toBe(0);
      expect(faults).toEqual([]);
    },
  );
});
