import { expect, test } from 'vitest';
import { browsed, inBrowser, invented, view, viewTitles } from './opened-page.ts';

/* What the reader has told her machine: little motion, and colours of her own. */

const { opened } = browsed();

/** Has the partner of an edge rolled along it: the shares of the way at which it was seen, %. */
const sharesRolled = `(async () => {
  const walked = document.querySelector('.walking input');
  const shares = [];
  new MutationObserver(() => shares.push(Number(walked.getAttribute('aria-valuetext').split(' ')[0])))
    .observe(walked, { attributes: true, attributeFilter: ['aria-valuetext'] });
  [...document.querySelectorAll('button')].find(({ textContent }) => textContent === 'Roll').click();
  while (walked.value !== '100') await new Promise((resolve) => setTimeout(resolve, 50));
  return shares;
})()`;

inBrowser('the walk of a seam', () => {
  test.each([
    ['rolls on', 'no-preference', false],
    ['goes in ten steps for who wants little motion', 'reduce', true],
  ] as const)(
    '%s',
    async (_, reducedMotion, inSteps) => {
      const { page } = await opened({ reducedMotion });
      await invented(page, 'Leading lady');
      await view(page, 'Pieces');
      await page.getByText('Edges of the side front', { exact: true }).click();
      await page.getByRole('button', { name: 'princess upper' }).click();
      await page.getByRole('button', { name: 'Walk it' }).click();
      await page.locator('.rolling').waitFor();
      const shares = await page.evaluate<number[]>(sharesRolled);
      expect(shares.length).toBeGreaterThan(5);
      expect(shares.every((share) => share % 10 === 0)).toBe(inSteps);
    },
    60_000,
  );
});

inBrowser('who wants little motion', () => {
  test('sees nothing that moves by itself, on any view', async () => {
    const { page } = await opened({ reducedMotion: 'reduce' });
    await invented(page, 'Leading lady');
    for (const name of viewTitles) {
      await view(page, name);
      await page.waitForTimeout(300);
      const moving = await page.evaluate(`[
        ...document.getAnimations().map(({ effect }) => effect.target.outerHTML.slice(0, 80)),
        ...[...document.querySelectorAll('*')]
          .filter((each) => getComputedStyle(each).scrollBehavior === 'smooth')
          .map((each) => each.outerHTML.slice(0, 80)),
      ]`);
      expect([name, moving]).toEqual([name, []]);
    }
  }, 60_000);
});

inBrowser.each(['dark', 'light'] as const)('colours of her own on a ground that is %s', (colorScheme) => {
  test('are those of the drawings, of what is lit, and of the view that is shown', async () => {
    const { page } = await opened({ forcedColors: 'active', colorScheme });
    await invented(page, 'Leading lady');
    await view(page, 'Pieces');
    await page.getByText('Edges of the side front', { exact: true }).click();
    await page.getByRole('button', { name: 'princess upper' }).click();
    await page.locator('.lit.partner').waitFor();
    const colour = (of: string, which: string): Promise<string> =>
      page.evaluate<string>(
        `getComputedStyle(document.querySelector(${JSON.stringify(of)}))[${JSON.stringify(which)}]`,
      );
    const system = (name: string): Promise<string> =>
      page.evaluate<string>(`(() => {
        const probe = document.createElement('p');
        probe.style.color = ${JSON.stringify(name)};
        document.body.append(probe);
        const { color } = getComputedStyle(probe);
        probe.remove();
        return color;
      })()`);
    const [ground, text, lit] = [
      await system('Canvas'),
      await system('CanvasText'),
      await system('Highlight'),
    ];
    expect(new Set([ground, text, lit]).size).toBe(3);
    expect(await colour('.drawn-piece .cut', 'stroke')).toBe(text);
    expect(await colour('.pane', 'backgroundColor')).toBe(ground);
    expect(await colour('.lit.touched', 'stroke')).toBe(lit);
    expect(await colour('nav a[aria-current]', 'borderBottomColor')).toBe(lit);
    expect(await colour('nav a:not([aria-current])', 'borderBottomColor')).toBe(ground);
    expect(await colour('.edges button[aria-pressed="true"]', 'backgroundColor')).toBe(lit);
    // What is shown as it will be printed stays so.
    await view(page, 'Learn');
    await page.locator('.construction').waitFor();
    expect(await colour('.construction', 'backgroundColor')).toBe('rgb(255, 255, 255)');
  }, 60_000);
});
