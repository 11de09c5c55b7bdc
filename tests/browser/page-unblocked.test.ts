import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { drawing } from './draft-page.ts';
import { longest, tasksDuring } from './main-thread.ts';
import { browsed, drawn, inBrowser, invented, view } from './opened-page.ts';

/* No view keeps the main thread from anything for 50 ms: neither as it is first opened, nor with what takes long in it, nor as the garment changes under it. */

const { opened } = browsed();

/** How long no task may take, ms. */
const most = 50;

/** A view: what there is to do first, and how it shows that it is done. */
interface Looked {
  readonly name: string;
  readonly stands: (page: Page) => Promise<unknown>;
  /** What is done there that takes long. */
  readonly does?: (page: Page) => Promise<unknown>;
}

const shown = (page: Page, text: string | RegExp, timeout = 120_000): Promise<void> =>
  page.getByText(text).first().waitFor({ timeout });

const views: readonly Looked[] = [
  {
    name: 'Choose',
    stands: async (page) => {
      await page.locator('.choice-picture').last().waitFor();
      await page.waitForTimeout(3000);
    },
    does: (page) => pulled(page, 'Strap width'),
  },
  {
    name: 'Pieces',
    stands: (page) => page.locator('.pane svg path').first().waitFor(),
    does: async (page) => {
      await page.getByText('Edges of the side front', { exact: true }).click();
      await page.getByRole('button', { name: 'princess upper' }).click();
      await page.getByRole('button', { name: 'Walk it' }).click();
      await pulled(page, 'Walked');
      await page.getByRole('button', { name: 'Lay aside' }).click();
    },
  },
  {
    name: 'Checks',
    stands: (page) => page.getByRole('row').nth(30).waitFor(),
    does: async (page) => {
      await page.getByRole('button', { name: 'hip', exact: true }).click();
      await shown(page, 'hip is marked on the drawing.');
    },
  },
  {
    name: 'Worn',
    stands: (page) => page.getByRole('button', { name: 'Put it on' }).waitFor(),
    does: async (page) => {
      await page.getByRole('button', { name: 'Put it on' }).click();
      await page.locator('canvas').waitFor({ timeout: 400_000 });
      await page.getByRole('button', { name: 'Back', exact: true }).click();
      await page.getByLabel('Cloth off the body').check();
      await page.waitForTimeout(1000);
    },
  },
  {
    name: 'Sizes',
    stands: (page) => page.getByLabel('Size chart').waitFor(),
    does: async (page) => {
      await page.getByLabel('Size chart').selectOption('en-13402-3-women.yaml');
      await page.getByRole('img').first().waitFor({ timeout: 120_000 });
      await pulled(page, 'Size');
    },
  },
  {
    name: 'Cloth',
    stands: (page) => page.getByRole('button', { name: /^Lay the/ }).waitFor(),
    does: async (page) => {
      await page.getByRole('button', { name: /^Lay the/ }).click();
      await shown(page, 'lengths of a quick plan');
    },
  },
  {
    name: 'Learn',
    stands: (page) => page.locator('.sentence').waitFor(),
    does: async (page) => {
      await page.getByRole('region', { name: /^The step/ }).focus();
      await page.keyboard.press('End');
      for (let i = 0; i < 20; i++) await page.keyboard.press('ArrowLeft');
      await page.locator('.sentence button').last().click();
      await page.waitForTimeout(500);
    },
  },
  {
    name: 'Change the code',
    stands: async (page) => {
      await drawing(page).getByRole('img').waitFor({ timeout: 60_000 });
      await page.waitForTimeout(1500);
    },
    does: async (page) => {
      await page.locator('.cm-content').click();
      await page.keyboard.press('Control+End');
      await page.keyboard.type('\n// changed\n');
      await page.waitForTimeout(3000);
      await page.getByRole('button', { name: 'Difference' }).click();
      await page.getByRole('button', { name: 'Hold it to everybody' }).click();
      await shown(page, /^All \d+ drawn/);
    },
  },
  {
    name: 'Take',
    stands: (page) => page.getByRole('button', { name: 'sheet.svg' }).waitFor(),
    does: async (page) => {
      const saved = page.waitForEvent('download', { timeout: 120_000 });
      await page.getByRole('button', { name: /ZIP/ }).first().click();
      await saved;
    },
  },
  {
    name: 'Measure',
    stands: (page) => page.getByLabel('Bust girth', { exact: true }).waitFor(),
    does: async (page) => {
      await page.getByLabel('Hip girth', { exact: true }).fill('101');
      await page.getByRole('heading', { name: 'Take these again first' }).waitFor();
      await page.waitForTimeout(1500);
    },
  },
];

/** Pulls a slider through its middle, a step every 20 ms. */
const pulled = (page: Page, label: string): Promise<unknown> =>
  page.evaluate(`(async () => {
    const slider = [...document.querySelectorAll('input[type=range]')].find((each) =>
      (each.getAttribute('aria-label') ?? each.labels[0]?.textContent ?? '').startsWith(${JSON.stringify(label)}));
    const [low, high] = [Number(slider.min), Number(slider.max)];
    for (let i = 0; i < 60; i++) {
      slider.value = String(low + (high - low) * (0.3 + ((i * 7) % 30) / 90));
      slider.dispatchEvent(new Event('input', { bubbles: true }));
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
    slider.dispatchEvent(new Event('change', { bubbles: true }));
  })()`);

/** Pastes so many lines of code into the editor, each with a name of its own that begins so; they are made there, for sent to it they would keep it busy. */
const pasted = (page: Page, lines: number, name = 'Math.sin'): Promise<unknown> =>
  page.evaluate(`(() => {
    const called = (i) => ${JSON.stringify(name)} + (${JSON.stringify(name)}.includes('.') ? '' : i);
    const text = Array.from({ length: ${lines} }, (_, i) =>
      \`export const thing\${i} = (a: number): number => \${called(i)}(a * \${i}) + 3; // something about it\\n\`).join('');
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', text);
    document.querySelector('.editor').shadowRoot.querySelector('.cm-content')
      .dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }));
  })()`);

/** A page with the code of a draft open, drawn, and the cursor behind it. */
async function atTheEndOfTheCode(): Promise<Page> {
  const { page } = await opened({ viewport: { width: 1400, height: 900 } });
  await invented(page, 'Leading lady');
  await view(page, 'Change the code');
  await drawing(page).getByRole('img').waitFor({ timeout: 60_000 });
  await page.locator('.cm-content').click();
  await page.keyboard.press('Control+End');
  return page;
}

inBrowser('the main thread is never kept for 50 ms', () => {
  test('by the first look at the page', async () => {
    const { page } = await opened();
    const tasks = await tasksDuring(page, async () => {
      await page.reload();
      await page.getByText('Nothing is measured yet.').waitFor();
      await page.getByRole('img').first().waitFor();
      await page.waitForTimeout(1000);
      await invented(page, 'Leading lady');
      await page.waitForTimeout(1500);
    });
    expect(tasks.length).toBeGreaterThan(50);
    expect(longest(tasks)).toBeLessThan(most);
  });

  test('by any of the ten views, as it is opened, used, and as the garment changes meanwhile', async () => {
    const { page } = await opened({ viewport: { width: 1400, height: 900 } });
    await invented(page, 'Leading lady');
    await view(page, 'Choose');
    await page.getByLabel('Strap width', { exact: true }).waitFor();
    const took: Record<string, number> = {};
    const measure = async (what: string, act: () => Promise<unknown>): Promise<void> => {
      const tasks = await tasksDuring(page, act);
      expect(tasks.length, what).toBeGreaterThan(10);
      took[what] = longest(tasks);
    };
    await view(page, 'Measure');
    await page.reload();
    await drawn(page, 'dress');
    for (const { name, stands, does } of views) {
      await measure(`${name}, first opened`, async () => {
        await view(page, name);
        await stands(page);
      });
      if (does) await measure(`${name}, used`, () => does(page));
      await measure(`${name}, while the garment changes`, async () => {
        for (const way of ['Undo', 'Redo']) {
          await page.getByRole('button', { name: way }).click();
          await page.waitForTimeout(1500);
        }
      });
    }
    const blocked = Object.entries(took).filter(([, longest]) => longest >= most);
    expect(blocked, JSON.stringify(took)).toEqual([]);
  }, 600_000);

  test('by 200 lines with a name in each that there is not', async () => {
    const page = await atTheEndOfTheCode();
    await page.waitForTimeout(2000);
    const tasks = await tasksDuring(page, async () => {
      await pasted(page, 200, 'nothing');
      await page.locator('.cm-lintRange-warning').first().waitFor({ timeout: 20_000 });
      await page.keyboard.type('const more = 3;');
      await page.waitForTimeout(3000);
    });
    expect(longest(tasks)).toBeLessThan(most);
  }, 120_000);

  test('by a text of 0.2 MB that is pasted into the editor, written in and laid beside what was there', async () => {
    const page = await atTheEndOfTheCode();
    const tasks = await tasksDuring(page, async () => {
      await pasted(page, 2500);
      await page.waitForTimeout(3000);
      await page.keyboard.type('const more = thing7(3);');
      await page.waitForTimeout(1500);
      await page.getByRole('button', { name: 'Difference' }).click();
      await page.waitForTimeout(3000);
      for (const way of ['Undo', 'Redo']) {
        await page.getByRole('button', { name: way }).click();
        await page.waitForTimeout(1500);
      }
    });
    expect(await page.locator('.cm-content').textContent()).toContain('thing');
    expect(longest(tasks)).toBeLessThan(most);
  }, 120_000);
});
