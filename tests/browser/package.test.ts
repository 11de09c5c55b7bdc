import { execFile } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
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
import { evaluate, garments, provenSheet } from ${JSON.stringify(join(root, '.dist', 'index.mjs'))};
const made = evaluate(garments.dress, ${JSON.stringify(measurements)});
if (made.ok) {
  const { sheet, report } = provenSheet(made.value, {});
  document.title = String(report.ok);
  document.querySelector('pre').textContent = btoa(unescape(encodeURIComponent(sheet)));
}
`;

if (browser === undefined)
  process.stderr.write('No Chromium here, and none can be installed: the browser is left out.\n');

it.skipIf(browser === undefined)('the package drafts the same dress in a browser, to the byte', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'bodkin-'));
  try {
    const { outputFiles } = await build({
      stdin: { contents: page, resolveDir: root },
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
