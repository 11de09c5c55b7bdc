import { execFile } from 'node:child_process';
import { cp, mkdtemp, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { DraftFiles } from '../../../cli/own-draft/draft-files.ts';
import { declarationsForEditor, writeTypes } from '../../../cli/page/declarations.js';
import { garmentFiles } from '../../../cli/page/views/code/sources.ts';
import { type TypeService, typeService } from '../../../cli/page/views/code/types/type-service.ts';
import { garments } from '../../../drafts/index.ts';
import { belt, sources } from './drafts-in-files.ts';

/*
 * What the editor knows of types: nothing is wrong with any draft as it stands, and what is planted is found where the compiler of
 * the command line finds it, which is another program (TypeScript 7, written in Go).
 */

const root = new URL('../../../', import.meta.url).pathname;
let types: TypeService;
let folder = '';

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bodkin-types-'));
  await writeTypes(root, join(folder, 'types'));
  types = typeService(await declarationsForEditor(join(folder, 'types')));
}, 120_000);
afterAll(() => rm(folder, { recursive: true, force: true }));

/** Puts these files in the place of all that were there before. */
function put(files: DraftFiles): void {
  types.tell(
    files,
    types.files().filter((file) => !Object.hasOwn(files, file)),
  );
}

const dress = garmentFiles(sources, 'dress');

/** Mistakes of a kind that only types show: the file, what stands there, and what is written instead. */
const slips: readonly (readonly [file: string, was: string, is: string])[] = [
  [
    'skirt/gore-sizes.ts',
    'export function goreSizes',
    "export const wide: number = 'wide';\nexport function goreSizes",
  ],
  ['sleeve/rules.ts', 'export const', "const loose: Readonly<Record<'a', number>> = { b: 1 };\nexport const"],
  ['sleeve/arm-edges.ts', 'export const', 'const bent = point(1);\nexport const'],
];

/** The drafts with mistakes in them. */
const planted = (): DraftFiles =>
  Object.fromEntries(
    Object.entries(dress).map(([file, text]) => {
      const [, was, is] = slips.find(([each]) => each === file) ?? [file, '', ''];
      if (was !== '') expect(text).toContain(was);
      return [file, was === '' ? text : text.replace(was, is)];
    }),
  );

describe('types in the editor', () => {
  test.each(Object.keys(garments))(
    'find nothing in any file of the %s as it stands',
    (name) => {
      put(garmentFiles(sources, name));
      expect(types.files().flatMap((file) => types.problems(file))).toEqual([]);
    },
    120_000,
  );

  test('find nothing in the belt of the lesson, which is a draft of one’s own', () => {
    put({ 'my-belt.ts': belt });
    expect(types.problems('my-belt.ts')).toEqual([]);
  });

  test('find what the compiler of the command line finds, in the same places and in the same words', async () => {
    const files = planted();
    for (const [file] of slips) expect(Object.keys(files)).toContain(file);
    put(files);
    const ours = types
      .files()
      .flatMap((file) => types.problems(file))
      .map(({ file, line, message }) => `${file}(${line}): ${message.split('\n')[0]}`);
    expect(ours.length).toBeGreaterThanOrEqual(slips.length);
    await cp(join(root, 'drafts'), join(folder, 'drafts'), { recursive: true });
    await symlink(join(root, 'engine'), join(folder, 'engine'));
    await symlink(join(root, 'node_modules'), join(folder, 'node_modules'));
    for (const [file] of slips) await writeFile(join(folder, 'drafts', file), files[file] ?? '');
    const project = {
      extends: join(root, 'tsconfig.json'),
      compilerOptions: {
        ...{ preserveSymlinks: true, verbatimModuleSyntax: false, isolatedModules: false },
        ...{ noUnusedLocals: false, noUnusedParameters: false },
      },
      include: ['drafts'],
    };
    await writeFile(join(folder, 'tsconfig.json'), JSON.stringify(project));
    await writeFile(join(folder, 'package.json'), JSON.stringify({ type: 'module', imports: {} }));
    const said = await new Promise<string>((resolve) =>
      execFile(
        process.execPath,
        [join(root, 'node_modules/typescript/bin/tsc'), '-p', folder, '--pretty', 'false'],
        { cwd: folder },
        (_, out) => resolve(out),
      ),
    );
    const theirs = [...said.matchAll(/^drafts\/(\S+)\((\d+),\d+\): error TS\d+: (.*)$/gm)].map(
      ([, file, line, message]) => `${file}(${line}): ${message}`,
    );
    expect(ours.toSorted()).toEqual(theirs.toSorted());
  }, 120_000);

  test('say what a name is, with what is said of it where it is declared', () => {
    const text = "import { point } from 'bodkin';\nconst corner = point(1, 2);\nexport default corner;\n";
    put({ 'own.ts': text });
    expect(types.meaning('own.ts', text.indexOf('corner'))?.meaning.signature).toBe('const corner: Point');
    const { meaning } = types.meaning('own.ts', text.lastIndexOf('point')) ?? {};
    expect(meaning?.signature).toMatch(/^\(alias\) point\(x: number, y: number\): Point/);
    expect(meaning?.says).toBe('The point at x, y (mm).');
    expect(types.meaning('own.ts', text.indexOf('='))).toBeUndefined();
    expect(types.meaning('nowhere.ts', 0)).toBeUndefined();
  });

  test('say what may stand behind a dot, and nothing elsewhere', () => {
    const text = "import { point } from 'bodkin';\nexport const across = point(1, 2).;\n";
    put({ 'own.ts': text });
    const names = types.parts('own.ts', text.indexOf(';', 40)).map(({ name }) => name);
    expect(names).toEqual(expect.arrayContaining(['x', 'y']));
    expect(types.parts('own.ts', 0)).toEqual([]);
    expect(types.parts('nowhere.ts', 0)).toEqual([]);
  });

  test('say nothing of a file that cannot be read, nor of names that a browser has', () => {
    put({ 'own.ts': 'const const' });
    expect(types.problems('own.ts')).toEqual([]);
    put({ 'own.ts': 'export const now = performance.now();\nexport const none = nothingOfTheKind;\n' });
    expect(types.problems('own.ts').map(({ line }) => line)).toEqual([2]);
  });

  test.each(['__proto__', 'constructor', '../../../etc/passwd', 'a b\n.ts', '%'])(
    'take a file of any name for a name: %j',
    (name) => {
      put(JSON.parse(`{${JSON.stringify(name)}: "export const one: string = 1;"}`) as DraftFiles);
      expect(types.files()).toEqual([name]);
      expect(types.problems(name)).toHaveLength(1);
    },
  );
});
