import { execFile } from 'node:child_process';
import { copyFile, mkdir, mkdtemp, readdir, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { promisify } from 'node:util';
import { build } from 'esbuild';
import { expect, it } from 'vitest';
import { evaluate, garments, provenSheet } from '../../drafts/index.ts';
import { measurements } from '../engine/bib.ts';
import { chromium } from './chromium.ts';

const root = new URL('../../', import.meta.url).pathname;
const browser = chromium();

/** What a page would do: draft, prove, and show how it came out. */
const page = `
import { evaluate, garments, provenSheet } from 'bodkin';
const made = evaluate(garments.dress, ${JSON.stringify(measurements)});
if (made.ok) {
  const { sheet, report } = provenSheet(made.value, {});
  document.title = String(report.ok);
  document.querySelector('pre').textContent = btoa(unescape(encodeURIComponent(sheet)));
}
`;

/** Installs the package into a folder with what it depends on, and nothing of what PDFs alone need. */
async function installedIn(folder: string): Promise<void> {
  const installed = join(folder, 'node_modules');
  const own = join(installed, 'bodkin');
  await mkdir(join(own, '.dist'), { recursive: true });
  await copyFile(join(root, 'package.json'), join(own, 'package.json'));
  for (const file of await readdir(join(root, '.dist')))
    if (file.endsWith('.mjs')) await copyFile(join(root, '.dist', file), join(own, '.dist', file));
  const { dependencies }: { dependencies: Readonly<Record<string, string>> } = JSON.parse(
    await readFile(join(root, 'package.json'), 'utf8'),
  );
  for (const name of Object.keys(dependencies)) {
    await mkdir(dirname(join(installed, name)), { recursive: true });
    await symlink(join(root, 'node_modules', name), join(installed, name));
  }
}

if (browser === undefined)
  process.stderr.write('No Chromium here, and none can be installed: the browser is left out.\n');

it.skipIf(browser === undefined)('the package drafts the same dress in a browser, to the byte', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'bodkin-'));
  try {
    await installedIn(folder);
    const { outputFiles } = await build({
      stdin: { contents: page, resolveDir: folder },
      bundle: true,
      platform: 'browser',
      format: 'iife',
      write: false,
      logLevel: 'silent',
    });
    const script = (outputFiles[0]?.text ?? '').replaceAll('</script', '<\\/script');
    const html = `<!doctype html><meta charset="utf-8"><title>-</title><pre></pre><script>${script}</script>`;
    await writeFile(join(folder, 'page.html'), html);
    const { stdout } = await promisify(execFile)(
      browser ?? '',
      [
        ...[
          '--headless',
          '--no-sandbox',
          '--disable-gpu',
          '--disable-background-networking',
          '--no-first-run',
        ],
        `--user-data-dir=${join(folder, 'profile')}`,
        '--dump-dom',
        `file://${join(folder, 'page.html')}`,
      ],
      { maxBuffer: 1e8 },
    );
    expect(/<title>(.*?)<\/title>/.exec(stdout)?.[1]).toBe('true');
    const shown = Buffer.from(/<pre>(.*?)<\/pre>/s.exec(stdout)?.[1] ?? '', 'base64').toString('utf8');
    const made = evaluate(garments.dress, measurements);
    if (!made.ok) throw new Error('not drafted');
    expect(shown).toBe(provenSheet(made.value, {}).sheet);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
});
