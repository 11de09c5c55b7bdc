import { expect, test } from 'vitest';
import { drawing, dropFile, telling } from './draft-page.ts';
import { barriers, beyondSide, browsed, drawn, inBrowser, view } from './opened-page.ts';

/* Files that say something odd, or name others, dropped on the page as `npm run build` leaves it, in a real browser. */

const browser = browsed();

const odd =
  'name: odd\nunits: cm\nbustGirth: 92\nunderBustGirth: 75\nwaistGirth: 74\nhipGirth: 99\nbackNeckPointToWaist: 48\n' +
  'neckShoulderPointToWaist: 43.5\nscyeDepth: 20\n';

/** Both of two lengths may be the one that is misread. */
const either = odd.replace('48', '45').replace('43.5', '41');

const chart =
  'units: cm\nsizes:\n' +
  '  - {size: "40", bustGirth: 92, waistGirth: 76, hipGirth: 99, backNeckPointToWaist: 41}\n' +
  '  - {size: "42", bustGirth: 96, waistGirth: 80, hipGirth: 103, backNeckPointToWaist: 41.2}\n' +
  '  - {body: leading-lady.yaml}\n  - {body: ours/her.yaml}\n  - {body: prompter-2.yaml}\n';

const prompter =
  'name: second prompter\nunits: cm\nbustGirth: 90\nwaistGirth: 72\nhipGirth: 97\nbackNeckPointToWaist: 40\n';

inBrowser('files dropped on the page', () => {
  test('are opened only where it is clear which is meant', async () => {
    const { page, faults } = await browser.opened();
    await page.evaluate(`(() => {
      const dataTransfer = new DataTransfer();
      for (const name of ['one.yaml', 'other.yaml']) dataTransfer.items.add(new File([${JSON.stringify(prompter)}], name));
      document.body.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }));
    })()`);
    await page.getByText('drop the measurements of one person, in one file').waitFor();
    await page.getByText('Nothing is measured yet.').waitFor();
    expect(faults).toEqual([]);
  });

  test('are a draft where the code is shown, which is not run before somebody says so, and measurements there too', async () => {
    const { page, faults } = await browser.opened();
    await dropFile(page, 'her.yaml', prompter);
    await drawn(page, 'dress');
    await view(page, 'Change the code');
    await drawing(page).getByRole('img').waitFor();
    await dropFile(page, 'mine.ts', telling('said.push("it ran");'));
    await page.getByText('mine.ts came in a file').waitFor();
    await page.getByRole('button', { name: 'Run it', exact: true }).click();
    await drawing(page).getByText('it ran').waitFor();
    await dropFile(page, 'other.yaml', prompter.replace('second', 'third'));
    await page.getByText('other.yaml is open.').waitFor();
    await view(page, 'Measure');
    expect(await page.getByLabel('Name or role').inputValue()).toBe('third prompter');
    expect(faults).toEqual([]);
  });

  test('and all that was made of them are gone once all is deleted, also what is being laid', async () => {
    const { page, faults } = await browser.opened();
    await dropFile(page, 'her.yaml', prompter);
    await drawn(page, 'dress');
    await view(page, 'Cloth');
    await page.getByLabel('Seek for').selectOption('five minutes');
    const before = page.workers().length;
    await page.getByRole('button', { name: 'Lay the dress on it' }).click();
    await expect.poll(() => page.workers().length).toBe(before + 1);
    await page.getByRole('button', { name: 'Delete all that is kept' }).click();
    await expect.poll(() => page.workers().length).toBe(before);
    await dropFile(page, 'her.yaml', prompter);
    await drawn(page, 'dress');
    await page.getByLabel('Seek for').selectOption('short');
    await page.getByRole('button', { name: 'Lay the dress on it' }).click();
    await page.getByText('No overlaps, and every piece is there').waitFor();
    expect(faults).toEqual([]);
  });
});

inBrowser.each([360, 1280, 3840])('a file dropped on a page of %i pixels', (width) => {
  test('whose measurements contradict each other is told what is more likely, which a press takes over', async () => {
    const { page, faults } = await browser.opened({ viewport: { width, height: 900 } });
    await dropFile(page, 'odd.yaml', odd);
    await page.getByRole('heading', { name: 'These contradict others' }).waitFor();
    const moved = page.getByRole('region', { name: 'Measurements that contradict each other' });
    await moved.getByText(/48 written, 42(\.\d)? more likely/).waitFor();
    await moved.getByText(/It looks misread/).waitFor();
    expect(await barriers(page)).toEqual([]);
    expect(await beyondSide(page)).toBeLessThanOrEqual(0);
    await moved.getByRole('button', { name: /^Take/ }).click();
    await drawn(page, 'dress');
    expect(await moved.count()).toBe(0);
    expect(Number(await page.getByLabel('Back neck point to waist').inputValue())).toBeLessThan(43);
    await page.getByRole('button', { name: 'Undo' }).click();
    await moved.waitFor();
    await moved.getByRole('checkbox').check();
    await drawn(page, 'dress');
    expect(await page.getByLabel('Back neck point to waist').inputValue()).toBe('48');
    expect(faults).toEqual([]);
  }, 60_000);

  test('whose measurements contradict each other, but not surely by the one that looks misread, is told what else may move', async () => {
    const { page, faults } = await browser.opened({ viewport: { width, height: 900 } });
    await dropFile(page, 'either.yaml', either);
    await page.getByRole('heading', { name: 'These contradict others' }).waitFor();
    const moved = page.getByRole('region', { name: 'Measurements that contradict each other' });
    await moved.getByText(/45 written, 41\.\d more likely/).waitFor();
    await moved.getByText(/41 written, 43\.\d more likely/).waitFor();
    await moved.getByText(/It looks misread/).waitFor();
    expect(await barriers(page)).toEqual([]);
    await moved.getByRole('button', { name: /^Take all/ }).click();
    await drawn(page, 'dress');
    expect(Number(await page.getByLabel('Back neck point to waist').inputValue())).toBeLessThan(42);
    expect(Number(await page.getByLabel('Neck shoulder point to waist').inputValue())).toBeGreaterThan(43);
    expect(faults).toEqual([]);
  }, 60_000);

  test('that is a chart asks for the bodies that it names, and takes what is here, or is dropped', async () => {
    const { page, faults } = await browser.opened({ viewport: { width, height: 900 } });
    await dropFile(page, 'odd.yaml', odd.replace('48', '40').replace('43.5', '41'));
    await drawn(page, 'dress');
    await view(page, 'Choose');
    await page.getByRole('radio', { name: /^Skirt/ }).check();
    await drawn(page, 'skirt');
    await view(page, 'Sizes');
    await page.getByLabel('Size chart').waitFor();
    await dropFile(page, 'mine.yaml', chart);
    const needs = page.getByRole('region', { name: 'Body files that the chart names' });
    await needs.getByText('her.yaml').waitFor();
    expect(await barriers(page)).toEqual([]);
    expect(await beyondSide(page)).toBeLessThanOrEqual(0);
    await needs.getByRole('button', { name: 'The invented leading lady' }).click();
    await expect.poll(() => needs.getByRole('listitem').count()).toBe(2);
    await needs.getByRole('button', { name: 'The measurements of odd' }).first().click();
    await expect.poll(() => needs.getByRole('listitem').count()).toBe(1);
    await dropFile(page, 'prompter-2.yaml', prompter);
    await page.getByText(/^The skirt in 5 sizes of mine: all true/).waitFor();
    expect(await needs.count()).toBe(0);
    // What was dropped here is no measurement of hers.
    await view(page, 'Measure');
    expect(await page.getByLabel('Name or role').inputValue()).toBe('odd');
    expect(faults).toEqual([]);
  }, 60_000);
});
