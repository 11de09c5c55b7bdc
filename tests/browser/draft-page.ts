import type { BrowserContextOptions, Page } from 'playwright-core';
import { type browsed, drawn, type OpenedPage, view } from './opened-page.ts';

/* What is done over and over where somebody learns from a draft and changes it. */

/** Opens the page with someone measured and a skirt chosen, in a browser of its own. */
export async function withSkirt(
  browser: ReturnType<typeof browsed>,
  options: BrowserContextOptions = {},
): Promise<OpenedPage> {
  const opened = await browser.opened(options);
  const { page } = opened;
  await page.getByText('Open a file').click();
  await page.getByRole('button', { name: 'Leading lady' }).click();
  await view(page, 'Choose');
  await page.getByRole('radio', { name: /^Skirt/ }).check();
  await drawn(page, 'skirt');
  return opened;
}

/** Goes to the step of this title. */
export async function toStep(page: Page, title: string): Promise<void> {
  await page.evaluate(`for (const each of document.querySelectorAll('.contents details')) each.open = true`);
  await page
    .getByRole('navigation', { name: 'Steps' })
    .getByRole('button', { name: title, exact: true })
    .click();
  await page.getByRole('heading', { name: title, exact: true }).waitFor();
}

/** A number in the sentence of the step. */
export const number = (page: Page, figure: string) =>
  page.locator('.sentence').getByRole('button', { name: figure, exact: true });

/** Puts other code into the editor. */
export async function write(page: Page, text: string): Promise<void> {
  await page.locator('.cm-content').click();
  await page.keyboard.press('Control+A');
  await page.keyboard.press('Delete');
  await page.keyboard.insertText(text);
}

/** Opens a draft from a file, which is not run before somebody says so. */
export async function openDraft(page: Page, name: string, text: string): Promise<void> {
  const files = page.locator('main details.files');
  if ((await files.getAttribute('open')) === null) await files.locator('summary').click();
  await page
    .locator('#draft-file')
    .setInputFiles({ name, mimeType: 'text/plain', buffer: Buffer.from(text) });
  await page.getByText(`${name} came in a file`).waitFor();
}

export const drawing = (page: Page) => page.getByRole('region', { name: 'What it draws' });

/** A draft that draws nothing, but says what it found out. */
export const telling = (what: string): string => `
const said: string[] = [];
const tries = (name: string, attempt: () => unknown): void => {
  try { attempt(); said.push(name + ' went through'); } catch (error) { said.push(name + ' failed'); }
};
${what}
export default {
  name: 'telling', title: 'Telling', shapedBy: [], choices: [],
  draw: () => ({ ok: false, issues: [{ code: 'own-said', severity: 'error', path: '', message: said.join('; ') }] }),
};
`;

/** Drops a file on the page. */
export const dropFile = (page: Page, name: string, text: string): Promise<unknown> =>
  page.evaluate(
    `(() => {
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File([${JSON.stringify(text)}], ${JSON.stringify(name)}));
      document.body.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }));
    })()`,
  );
