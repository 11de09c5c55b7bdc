import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { pageFiles, type ServedPage, servePage } from '../../cli/open/page-server.ts';
import { garments } from '../../drafts/index.ts';
import { bodkin } from '../cli/session.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';
import { installed } from '../installed.ts';
import { type Firefox, firefox } from './marionette.ts';
import { built } from './opened-page.ts';

/* The dressmaker's way in another browser: Firefox, whose engine shares nothing with Chromium's. */

const folder = temporaryFolder();
const program = installed(['/usr/bin/firefox-esr', '/usr/bin/firefox'], 'firefox-esr');
const understudy = fileURLToPath(new URL('../../measurements/understudy.yaml', import.meta.url));

const named = (name: string): string => `//*[self::button or self::a][normalize-space()="${name}"]`;
const says = 'return document.body.textContent.includes(arguments[0])';

describe.skipIf(program === undefined)('in Firefox', () => {
  let served: ServedPage;
  let browser: Firefox;
  beforeAll(async () => {
    if (program === undefined) return;
    served = await servePage(await pageFiles(built), 0);
    browser = await firefox(program);
  }, 90_000);
  afterAll(async () => {
    await browser?.close();
    await served?.close();
  });

  test('she comes from measurements by choices, pieces and checks to the very PDF that the command line writes', async () => {
    await browser.go(served.address);
    await browser.press('//summary[starts-with(normalize-space(), "Open a file")]');
    await browser.press(named('Understudy'));
    await browser.until(says, 'The dress is drawn, and every check is true.');
    await browser.press('//*[@id="hipGirth"]');
    await browser.until('return document.querySelectorAll(".figure-sides svg").length === 3');
    await browser.press(named('Choose'));
    await browser.type('//*[@id="strapWidth"]', '40');
    await browser.until('return document.querySelectorAll(".choice-picture").length > 5');
    await browser.press(named('Pieces'));
    await browser.press('//summary[normalize-space()="Edges of the side front"]');
    await browser.press(named('princess upper'));
    await browser.press(named('Walk it'));
    await browser.until('return document.querySelector(".rolling") !== null');
    await browser.press(named('Checks'));
    await browser.until(says, 'read back from the sheet itself');
    await browser.press(named('Learn'));
    await browser.until('return document.querySelector(".construction") !== null');
    await browser.press(named('Change the code'));
    await browser.until('return document.querySelector(".cm-content, .drawn .construction") !== null');
    await browser.until('return document.querySelector(".drawn .construction") !== null');
    await browser.press(named('Take'));
    await browser.press(named('dress-a4.pdf'));
    const bytes = await browser.downloaded('dress-a4.pdf');
    const out = folder.at('dress-a4.pdf');
    const words = [
      'print',
      'dress',
      '--body',
      understudy,
      '--paper',
      'a4',
      '--set',
      'strapWidth=40',
      '--out',
      out,
    ];
    const { code, err } = await bodkin(words, { garments: Object.values(garments) });
    expect(code, err).toBe(0);
    expect(Buffer.compare(bytes, await readFile(out))).toBe(0);
  }, 240_000);

  test('all is there after a reload, and nothing once it is deleted', async () => {
    await browser.go(served.address);
    await browser.until(says, 'The dress is drawn, and every check is true.');
    await browser.press(named('Delete all that is kept'));
    await browser.go('about:blank');
    await browser.go(served.address);
    await browser.until(says, 'Nothing is measured yet.');
  }, 60_000);
});
