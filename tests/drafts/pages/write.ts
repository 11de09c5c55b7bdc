import { existsSync, readdirSync, writeFileSync } from 'node:fs';
import { bandsPage, bandsUrl } from './bands.ts';
import { allSteps, headingsOn, pageUrl, readPage, rewritten } from './written-pages.ts';

/** Writes the steps of every lesson anew, and the page of bands: `npm run pages`. */
const steps = allSteps();
const folders = readdirSync(pageUrl('').pathname.replace('README.md', ''), { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => `${name}/`);
for (const folder of folders.filter((each) => existsSync(pageUrl(each)))) {
  const page = readPage(folder);
  const written = rewritten(page, steps);
  if (written !== page) writeFileSync(pageUrl(folder), written);
  if (headingsOn(page).length > 0)
    process.stdout.write(`${written === page ? 'unchanged' : 'written'}: drafts/${folder}README.md\n`);
}
writeFileSync(bandsUrl, bandsPage());
