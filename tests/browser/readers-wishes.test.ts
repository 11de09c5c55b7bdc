import { expect, test } from 'vitest';
import { toStep } from './draft-page.ts';
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
    await view(page, 'Learn');
    await page.locator('.construction').waitFor();
    await toStep(page, 'Back shoulder');
    expect(await colour('.construction', 'backgroundColor')).toBe(ground);
    expect(await colour('.construction .added path:not(.touch)', 'stroke')).toBe(text);
  }, 60_000);
});

inBrowser('the drawing of a lesson', () => {
  test('is dark lines on light paper or light ones on dark, as the screen is, and black on white on paper', async () => {
    const { page } = await opened({ colorScheme: 'dark' });
    await invented(page, 'Leading lady');
    await view(page, 'Learn');
    await page.locator('.construction').waitFor();
    await toStep(page, 'Back shoulder');
    const [ground, line] = [
      `getComputedStyle(document.querySelector('.lesson .construction')).backgroundColor`,
      `getComputedStyle(document.querySelector('.lesson .construction .added path:not(.touch)')).stroke`,
    ];
    const light = (colour: string): number => Math.max(...(colour.match(/\d+/g) ?? []).map(Number));
    const seen = async () => [
      light(await page.evaluate<string>(ground)),
      light(await page.evaluate<string>(line)),
    ];
    const [darkGround = 255, lightLine = 0] = await seen();
    expect(darkGround).toBeLessThan(50);
    expect(lightLine).toBeGreaterThan(150);
    await page.emulateMedia({ colorScheme: 'light' });
    const [lightGround = 0, darkLine = 255] = await seen();
    expect(lightGround).toBeGreaterThan(240);
    expect(darkLine).toBeLessThan(100);
    await page.emulateMedia({ colorScheme: 'dark', media: 'print' });
    const [paper = 0, ink = 255] = await seen();
    expect(paper).toBe(255);
    expect(ink).toBeLessThan(100);
  }, 60_000);
});
