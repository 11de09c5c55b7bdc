import { expect, test } from 'vitest';
import { barriers, beyondSide, browsed, drawn, inBrowser, invented, view } from './opened-page.ts';

const { opened } = browsed();

inBrowser('on the table of pieces', () => {
  test('an edge lights its partner up, both lengths are told, and one is walked along the other', async () => {
    const { page, faults } = await opened();
    await invented(page, 'Leading lady');
    await view(page, 'Pieces');
    // Each piece is a picture with words of its own: which, how large, and what is wrong with it.
    await page
      .getByRole('img', { name: /^Piece 2, side front, [\d.]+ cm wide and [\d.]+ cm high\. / })
      .waitFor();
    await page.getByText('Edges of the side front', { exact: true }).click();
    await page.getByRole('button', { name: 'princess upper' }).click();
    const seam = page.getByRole('region', { name: 'The seam' });
    await seam.getByText('198.3 mm').first().waitFor();
    expect(await page.locator('.lit.touched').count()).toBe(1);
    expect(await page.locator('.lit.partner').count()).toBe(1);
    await seam.getByRole('button', { name: 'Walk it' }).click();
    const walked = page.getByRole('slider', { name: 'Walked' });
    const turn = () => page.locator('.rolling > g').getAttribute('transform');
    await walked.fill('10');
    const early = await turn();
    await walked.fill('90');
    await expect.poll(turn).not.toBe(early);
    await seam.getByRole('button', { name: 'Roll' }).click();
    await expect.poll(() => walked.inputValue(), { timeout: 20_000 }).toBe('100');
    expect(await barriers(page)).toEqual([]);
    await seam.getByRole('button', { name: 'Lay aside' }).click();
    await page.getByLabel('allowance').uncheck();
    expect(await page.locator('.drawn-piece .cut').first().isVisible()).toBe(false);
    expect(faults).toEqual([]);
  });

  test('a finger touches an edge, and two enlarge it', async () => {
    const { page } = await opened({ viewport: { width: 390, height: 780 }, hasTouch: true, isMobile: true });
    await invented(page, 'Leading lady');
    await view(page, 'Pieces');
    await page.getByLabel('Show', { exact: true }).selectOption({ label: '8 sleeve' });
    const pane = page.getByRole('region', { name: /^Drawing/ });
    await pane.scrollIntoViewIfNeeded();
    const box = await pane.boundingBox();
    const edge = await page.locator('.touch').nth(1).boundingBox();
    if (!box || !edge) throw new Error('nothing is drawn');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    const session = await page.context().newCDPSession(page);
    const seen = async () => Number((await page.locator('.pane svg').getAttribute('viewBox'))?.split(' ')[2]);
    const width = await seen();
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', apart: number) =>
      session.send('Input.dispatchTouchEvent', {
        type,
        touchPoints:
          type === 'touchEnd'
            ? []
            : [
                { x: x - apart, y, id: 1 },
                { x: x + apart, y, id: 2 },
              ],
      });
    await touch('touchStart', 30);
    for (let apart = 35; apart <= 90; apart += 5) await touch('touchMove', apart);
    await touch('touchEnd', 90);
    await expect.poll(seen).toBeLessThan(width * 0.7);
    expect(await beyondSide(page)).toBeLessThanOrEqual(0);
  });
});

inBrowser('what she chose', () => {
  test('can be undone and done again, by buttons and by keys, over measurements and choices', async () => {
    const { page } = await opened();
    await invented(page, 'Leading lady');
    await view(page, 'Choose');
    const strap = page.getByLabel('Strap width', { exact: true });
    await strap.fill('30');
    await strap.press('Tab');
    await page.getByRole('radio', { name: 'pointed' }).first().check();
    await page.getByRole('button', { name: 'Undo' }).click();
    expect(await page.getByRole('radio', { name: 'square' }).isChecked()).toBe(true);
    await page.keyboard.press('Control+z');
    expect(await strap.inputValue()).toBe('');
    await page.keyboard.press('Control+z');
    await page.getByText('Nothing is measured yet.').waitFor();
    await page.keyboard.press('Control+Shift+z');
    await page.keyboard.press('Control+y');
    expect(await strap.inputValue()).toBe('30');
    await drawn(page, 'dress');
  });

  test('has a link, with her measurements only where she asks for that', async () => {
    const { page } = await opened();
    await invented(page, 'Leading lady');
    await view(page, 'Choose');
    await page.getByRole('radio', { name: 'whole', exact: true }).first().check();
    await page.getByLabel('Strap width', { exact: true }).fill('33');
    await page.getByText('A link to this').click();
    const link = await page.getByLabel('The link', { exact: true }).inputValue();
    expect(link).toContain('strapWidth=33');
    expect(link).not.toContain('bustGirth');
    expect(await page.getByText('is not in the link').count()).toBe(0);
    await page.getByLabel(/Her measurements too/).check();
    const full = await page.getByLabel('The link', { exact: true }).inputValue();
    expect(full).toContain('bustGirth');
    const bare = await opened({}, link.slice(link.indexOf('#')));
    await bare.page.getByText('The choices of the link are open.').waitFor();
    expect(await bare.page.getByLabel('Strap width', { exact: true }).inputValue()).toBe('33');
    await bare.page.getByText('Nothing is measured yet.').waitFor();
    const whole = await opened({}, full.slice(full.indexOf('#')));
    await drawn(whole.page, 'dress');
    expect(await whole.page.getByRole('radio', { name: 'whole', exact: true }).first().isChecked()).toBe(
      true,
    );
    expect([...bare.faults, ...whole.faults]).toEqual([]);
  });

  test.each([
    ['markup', 'choose/<img src=x onerror=alert(1)>?strapWidth=<b>1</b>'],
    ['no data', 'choose/dress?strapWidth=30&&%7Bnot json'],
    ['names of the language', 'choose/dress?__proto__=1&constructor=2&&[1]'],
    ['too much', `choose/dress?a=${'x'.repeat(50_000)}`],
    ['no text', 'choose/%E0%A4%A?x'],
  ])('is taken from a link that holds %s as text, or not at all', async (_, link) => {
    const { page, faults } = await opened({}, `#${link}`);
    await page.getByRole('heading', { level: 1, name: 'Choose' }).waitFor();
    await page.waitForTimeout(800);
    expect(faults).toEqual([]);
    expect(await page.locator('main img').count()).toBe(0);
  });

  test('that lies beyond what a draft takes is told what would do, and takes it at a press', async () => {
    const { page } = await opened();
    await invented(page, 'Leading lady');
    await view(page, 'Choose');
    await page.getByLabel('Strap width', { exact: true }).fill('900');
    await page.getByRole('button', { name: 'Take 60 mm' }).click();
    await drawn(page, 'dress');
  });
});

inBrowser('the figure', () => {
  test('shows the tape of the field that has the focus, and what to take again', async () => {
    const { page } = await opened();
    await invented(page, 'Understudy');
    await page.getByLabel('Hip girth', { exact: true }).focus();
    await page
      .getByRole('img', { name: /^Her form from the front: the tape for the hip girth, [\d.]+ cm\./ })
      .waitFor();
    await page
      .getByText('Hold it close all round, neither loose nor pressed in, while she breathes quietly.')
      .waitFor();
    await page.getByRole('heading', { name: 'Take these again first' }).waitFor();
    const again = page.getByRole('region', { name: 'What to take again first' }).getByRole('link');
    expect(await again.count()).toBe(3);
    await again.first().click();
    expect(await page.locator(':focus').getAttribute('id')).toMatch(/^[a-z]+[A-Z]/);
  });
});

inBrowser('a figure of the checks', () => {
  test('leads to its place on the drawing', async () => {
    const { page } = await opened();
    await invented(page, 'Understudy');
    await view(page, 'Checks');
    await page.getByText('read back from the sheet itself').waitFor();
    await page.getByRole('button', { name: 'hip', exact: true }).click();
    await page.getByText('hip is marked on the drawing.').waitFor();
    await expect.poll(() => page.locator('.lit').count()).toBe(4);
  });
});

inBrowser('the page', () => {
  test('keeps no cookies, runs no code made from text, and is written plainly on paper', async () => {
    const { page, faults } = await opened();
    await invented(page, 'Leading lady');
    expect(await page.context().cookies()).toEqual([]);
    expect(
      await page.evaluate(`new Promise((resolve) => {
        addEventListener('securitypolicyviolation', ({ violatedDirective }) => resolve(violatedDirective), { once: true });
        const script = document.createElement('script');
        script.textContent = 'document.title = "run"';
        document.head.append(script);
      })`),
    ).toContain('script-src');
    expect(await page.title()).not.toBe('run');
    await page.emulateMedia({ media: 'print', reducedMotion: 'reduce' });
    await view(page, 'Pieces').catch(() => {});
    expect(await page.getByRole('button', { name: 'Undo' }).isVisible()).toBe(false);
    expect(faults.filter((fault) => !fault.includes('Content Security Policy'))).toEqual([]);
  });
});
