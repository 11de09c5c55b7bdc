import { execFile } from 'node:child_process';
import { cp, mkdir, mkdtemp, readFile, realpath, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { promisify } from 'node:util';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { evaluate, garments, provenSheet, walkSheet } from '../../drafts/index.ts';
import { measurements } from '../engine/bib.ts';

const root = new URL('../../', import.meta.url).pathname;
const runFile = promisify(execFile);

/** What somebody else's program would say: every name it needs, under the strictest settings. */
const consumer = `
import { defineDraft, edgeLength, evaluate, garments, point, provenSheet, readBody, walkSheet, type Piece, type Result } from 'bodkin';
const read = readBody({ units: 'cm', bustGirth: 92, waistGirth: 74, hipGirth: 98, backNeckPointToWaist: 41 });
if (!read.ok) throw new Error(read.issues[0]?.message ?? '');
const made = evaluate(garments.trial, ${JSON.stringify(measurements)}, { sleeve: 'plain' });
if (!made.ok) throw new Error('not drafted');
const pieces: readonly Piece[] = made.value.garment.pieces;
const { sheet, report } = provenSheet(made.value, {});
const walked: Result<{ readonly ok: boolean }> = walkSheet(sheet);
export const mine = defineDraft({
  name: 'band', title: 'A band', shapedBy: ['waistGirth'],
  choices: [{ kind: 'number', name: 'depth', unit: 'mm', default: 30, min: 10, max: 90, help: 'how deep' }],
  // @ts-expect-error: no issue has this code.
  draw: () => ({ ok: false, issues: [{ code: 'too-deep', severity: 'error', path: '', message: '' }] }),
});
export const marked = defineDraft({
  name: 'band', title: 'A band', shapedBy: ['waistGirth'],
  choices: [{ kind: 'number', name: 'depth', unit: 'mm', default: 30, min: 10, max: 90, help: 'how deep' }],
  draw: (_, { depth }) => ({ ok: false, issues: [{ code: 'own-none', severity: 'error', path: '', message: String(depth + point(1, 2).x) }] }),
});
console.log(pieces.length, report.ok, walked.ok, edgeLength(pieces[0]?.edges[0] ?? { name: '', curves: [] }) > 0);
`;

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bodkin-'));
  await mkdir(join(folder, 'node_modules'));
  await symlink(root, join(folder, 'node_modules', 'bodkin'));
  await writeFile(join(folder, 'package.json'), '{"type":"module"}');
  await writeFile(join(folder, 'use.ts'), consumer);
  const strict = {
    target: 'ES2023',
    lib: ['ES2023', 'DOM'],
    module: 'NodeNext',
    strict: true,
    noUncheckedIndexedAccess: true,
    exactOptionalPropertyTypes: true,
    types: [],
    outDir: 'out',
  };
  const settings = { compilerOptions: strict, include: ['use.ts'] };
  await writeFile(join(folder, 'tsconfig.json'), JSON.stringify(settings));
});
afterAll(() => rm(folder, { recursive: true }));

/** A folder in which the package is installed with what it depends on, and nothing else. */
async function installedAlone(at: string): Promise<void> {
  const own = join(at, 'node_modules', 'bodkin');
  for (const part of ['.dist', 'cli/bodkin.js', 'cli/v8-settings.js', 'cli/schemas', 'package.json'])
    await cp(join(root, part), join(own, part), { recursive: true });
  const { packages } = JSON.parse(await readFile(join(root, 'package-lock.json'), 'utf8'));
  for (const [name, { dev, optional, peer }] of Object.entries<Record<string, boolean>>(packages)) {
    if (!/^node_modules\/(?:@[^/]+\/)?[^/]+$/.test(name) || dev || optional || peer) continue;
    await mkdir(dirname(join(at, name)), { recursive: true });
    await symlink(await realpath(join(root, name)), join(at, name));
  }
  await writeFile(join(at, 'package.json'), '{"type":"module"}');
}

describe('the package', () => {
  it('is taken by a strict compiler, and runs', async () => {
    const compiler = join(root, 'node_modules', 'typescript', 'bin', 'tsc');
    const checked = await runFile(process.execPath, [compiler], { cwd: folder }).catch((error) => error);
    expect(checked.stdout).toBe('');
    const { stdout } = await runFile(process.execPath, [join(folder, 'out', 'use.js')]);
    expect(stdout).toBe('5 true true true\n');
  });

  it('holds the schemas of its results, and what its issues mean', async () => {
    await writeFile(
      join(folder, 'schema.mjs'),
      `import schema from 'bodkin/schemas/walk.json' with { type: 'json' };
      import { explanations } from 'bodkin';
      process.stdout.write(schema.title + '. ' + explanations['edge-unsewn']);`,
    );
    const { stdout } = await runFile(process.execPath, ['--no-warnings', join(folder, 'schema.mjs')]);
    expect(stdout).toMatch(/^What “bodkin walk --json” prints\. An edge has an allowance/);
    const packed = await runFile('npm', ['pack', '--dry-run', '--json', '--ignore-scripts'], { cwd: root });
    const files = JSON.parse(packed.stdout)[0].files.map(({ path }: { readonly path: string }) => path);
    expect(files).toEqual(
      expect.arrayContaining(['cli/schemas/walk.json', 'cli/schemas/refusal.json', 'cli/issues.md']),
    );
  });

  it('imports nothing but what is installed with it, or what it says goes beside it', async () => {
    const said = JSON.parse(await readFile(join(root, 'package.json'), 'utf8'));
    const optional = Object.keys(said.peerDependenciesMeta);
    const text = await readFile(join(root, '.dist', 'index.mjs'), 'utf8');
    const packagesOf = (imports: RegExp): readonly string[] =>
      [...text.matchAll(imports)].map(([, name = '']) =>
        name
          .split('/')
          .slice(0, name.startsWith('@') ? 2 : 1)
          .join('/'),
      );
    const atOnce = packagesOf(/^(?:import|export)\b[^;]*?\bfrom "([^"]+)";$/gm);
    expect(atOnce.length).toBeGreaterThan(8);
    expect(atOnce.filter((name) => !(name in said.dependencies))).toEqual([]);
    const later = packagesOf(/\bimport\("([^"]+)"\)/g);
    expect(later.filter((name) => !(name in said.dependencies || optional.includes(name)))).toEqual([]);
    expect(optional.filter((name) => !(name in said.peerDependencies))).toEqual([]);
  });

  it('is imported, prints, and takes a draft of one’s own where it is installed alone', async () => {
    const at = join(folder, 'alone');
    await installedAlone(at);
    const bodkin = (...words: readonly string[]) =>
      runFile(process.execPath, [join('node_modules', 'bodkin', 'cli', 'bodkin.js'), ...words], { cwd: at });
    await writeFile(
      join(at, 'use.js'),
      `import { garments } from 'bodkin'; console.log(garments.skirt.name);`,
    );
    expect((await runFile(process.execPath, [join(at, 'use.js')])).stdout).toBe('skirt\n');
    await writeFile(
      join(at, 'band.ts'),
      `import { defineDraft } from 'bodkin';
      export default defineDraft({ name: 'band', title: 'A waistband', shapedBy: ['waistGirth'], choices: [],
        draw: () => ({ ok: false, issues: [] }) });`,
    );
    expect((await bodkin('list', '--draft', './band.ts')).stdout).toContain('A waistband');
    await writeFile(join(at, 'body.json'), JSON.stringify(measurements));
    await bodkin('print', 'skirt', '--body', 'body.json', '--paper', 'a4', '--out', 'skirt.pdf');
    expect((await readFile(join(at, 'skirt.pdf'))).subarray(0, 5).toString()).toBe('%PDF-');
  });

  it('is bundled for a browser without any part of Node', async () => {
    const { outputFiles, warnings } = await build({
      stdin: { contents: "export { evaluate, garments, provenSheet } from 'bodkin';", resolveDir: folder },
      bundle: true,
      platform: 'browser',
      format: 'esm',
      write: false,
      logLevel: 'silent',
    });
    expect(warnings).toEqual([]);
    expect(outputFiles[0]?.text).not.toContain('from "node:');
  });

  it('goes from measurements to a sheet that walks', () => {
    const made = evaluate(garments.skirt, measurements);
    if (!made.ok) throw new Error('not drafted');
    const { sheet, report } = provenSheet(made.value, {});
    expect(report.ok).toBe(true);
    expect(walkSheet(sheet).ok).toBe(true);
  });
});
