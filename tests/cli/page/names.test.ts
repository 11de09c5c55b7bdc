import { CompletionContext } from '@codemirror/autocomplete';
import { javascript } from '@codemirror/lang-javascript';
import { EditorState } from '@codemirror/state';
import { describe, expect, test } from 'vitest';
import type { DraftFiles } from '../../../cli/own-draft/draft-files.ts';
import { namesForEditor } from '../../../cli/page/names-for-editor.ts';
import { completionsAt } from '../../../cli/page/views/code/names/completions.ts';
import type { KnownNames } from '../../../cli/page/views/code/names/known-names.ts';
import { nameAt } from '../../../cli/page/views/code/names/name-at.ts';
import { slipsIn } from '../../../cli/page/views/code/names/slips.ts';
import { garmentFiles } from '../../../cli/page/views/code/sources.ts';
import * as program from '../../../drafts/index.ts';
import { belt, sources } from './drafts-in-files.ts';

/* What the editor knows of names: held to the modules themselves, and to the drafts as they stand. */

const names = namesForEditor(new URL('../../../', import.meta.url).pathname);
const choices = Object.values(program.garments).flatMap((draft) => draft.choices);
const skirt = garmentFiles(sources, 'skirt');

const known = (file: string, files: DraftFiles): KnownNames => ({ file, files, program: names, choices });

/** A file of the skirt with something else in it. */
function changed(file: string, was: string | RegExp, is: string): KnownNames {
  const text = (skirt[file] ?? '').replace(was, is);
  expect(text).not.toBe(skirt[file]);
  return known(file, { ...skirt, [file]: text });
}

const said = (of: KnownNames): readonly string[] => [...slipsIn(of)].map(({ message }) => message);

describe('the names of the program', () => {
  test('are all that its modules export, and nothing else', () => {
    const { engineParts, ...surface } = program;
    const exported = new Set([...Object.keys(surface), ...Object.keys(engineParts), 'engineParts']);
    const values = Object.keys(names).filter((name) => !names[name]?.isType);
    expect([...exported].filter((name) => !values.includes(name))).toEqual([]);
    // What is left are types that a class declares, and types that come by the name of a value.
    for (const name of values) expect(exported.has(name) || /^[A-Z]/.test(name), name).toBe(true);
  });

  test('come with how they are used and what they do', () => {
    expect(names.point).toEqual({
      signature: 'point(x: number, y: number): Point',
      says: 'The point at x, y (mm).',
    });
    expect(names.SketchBuilder?.members?.curve?.signature).toMatch(/^curve\(/);
    const bare = Object.entries(program).flatMap(([name, value]) =>
      typeof value === 'function' && names[name]?.says === '' ? [name] : [],
    );
    expect(bare).toEqual([]);
  });
});

describe('names that there are not', () => {
  test.each(Object.keys(program.garments))('are none in any file of the %s', (name) => {
    const files = garmentFiles(sources, name);
    expect(
      Object.keys(files).flatMap((file) => said(known(file, files)).map((each) => `${file}: ${each}`)),
    ).toEqual([]);
  });

  test('are none in the belt of the lesson', () => {
    expect(said(known('my-belt.ts', { 'my-belt.ts': belt }))).toEqual([]);
  });

  test.each<[string, string, string | RegExp, string, string]>([
    [
      'an import of a file',
      'skirt/skirt.ts',
      /import \{ skirtRules as rules \}/,
      'import { skirtRuls as rules }',
      'There is no “skirtRuls” in ./rules.ts. Do you mean “skirtRules”?',
    ],
    [
      'an import of the program',
      'skirt/rules.ts',
      'import { commonPractice }',
      'import { comonPractice }',
      'There is no “comonPractice” in ../../engine/sources.ts. Do you mean “commonPractice”?',
    ],
    [
      'an import of a package',
      'skirt/rules.ts',
      "'../../engine/sources.ts'",
      "'lines'",
      'A draft imports from “bodkin” and its own files; there is no “lines”.',
    ],
    [
      'a measurement',
      'skirt/gore-sizes.ts',
      'size.hipGirth',
      'size.hipGirt',
      'There is no measurement “hipGirt”. Do you mean “hipGirth”?',
    ],
    [
      'a choice',
      'skirt/hip-and-hem.ts',
      'choice.hipEase',
      'choice.hipEas',
      'There is no choice “hipEas”. Do you mean “hipEase”?',
    ],
    [
      'a rule',
      'skirt/gore-sizes.ts',
      'rules.sideRise',
      'rules.sideRice',
      'There is no rule “sideRice”. Do you mean “sideRise”?',
    ],
    [
      'a name',
      'skirt/gore-sizes.ts',
      'sayTakenIn(table',
      'sayTakenInn(table',
      'Nothing is called “sayTakenInn” here. Do you mean “sayTakenIn”?',
    ],
    [
      'a name that is not imported',
      'skirt/gore-sizes.ts',
      'sayTakenIn(table',
      'plainSeam(table',
      'Nothing is called “plainSeam” here. It can be imported from the program.',
    ],
  ])('are found before the code is run: %s', (_, file, was, is, message) => {
    const of = changed(file, was, is);
    const slips = [...slipsIn(of)];
    expect(slips.map((slip) => slip.message)).toContain(message);
    // Each lies where it is written.
    const text = of.files[file] ?? '';
    for (const { from, to } of slips) expect(text.slice(from, to)).toMatch(/^[\w$]+$/);
  });

  test('are not guessed at where a file cannot be read', () => {
    expect(said(known('a.ts', { 'a.ts': 'const = nothing(;\n' }))).toEqual([]);
  });
});

describe('what could be written', () => {
  /** What is offered at the bar in a text, in a file of the skirt. */
  function offered(text: string, file = 'skirt/new.ts'): readonly string[] {
    const pos = text.indexOf('|');
    const doc = text.replace('|', '');
    const state = EditorState.create({ doc, extensions: [javascript({ typescript: true })] });
    const found = completionsAt(
      new CompletionContext(state, pos, true),
      known(file, { ...skirt, [file]: doc }),
      () => ({}) as never,
    );
    return found?.options.map(({ label }) => label) ?? [];
  }

  test.each<[string, string, readonly string[]]>([
    ['measurements', 'const { size } = table;\nconst a = size.|', ['waistGirth', 'shoulderSlope']],
    ['measurements in a sentence', ['const a = mm`Half: $', '{size.|}`;'].join(''), ['hipGirth']],
    ['choices', 'const a = table.choice.|', ['hipEase', 'skirtFullness']],
    ['rules', "import { skirtRules as rules } from './rules.ts';\nconst a = rules.|", ['sideBalance']],
    ['what a sketch can do', 'sketch.|', ['curve', 'point', 'relation']],
    ['names of a file', "import { | } from './rules.ts';", ['skirtRules']],
    ['names of the program', "import { pl| } from 'bodkin';", ['plainSeam', 'point']],
    ['anything with a name', 'const mine = 1;\nconst a = m|', ['mine', 'measurementNames']],
  ])('are %s', (_, text, some) => {
    expect(offered(text)).toEqual(expect.arrayContaining([...some]));
  });

  test('is nothing within words', () => {
    expect(offered("const a = 'siz|e';")).toEqual([]);
    expect(offered('// size.w|')).toEqual([]);
    expect(offered('const a = mm`Half wai|st: 2`;')).toEqual([]);
  });
});

describe('a name that the cursor is in', () => {
  test.each([
    ['skirt/gore-sizes.ts', 'hipGirth', 'hip girth, mm'],
    ['skirt/gore-sizes.ts', 'sideRise', 'rule K1, 0.05 share'],
    ['skirt/hip-and-hem.ts', 'hipEase', 'choice hipEase: 20 to 400 mm; usually auto'],
    ['skirt/rules.ts', 'commonPractice', "commonPractice = 'common practice, no source'"],
    ['skirt/skirt.ts', 'drawSkirt', 'drawSkirt(onto: SkirtTable'],
  ])('is told in %s of %s', (file, name, signature) => {
    const doc = skirt[file] ?? '';
    const state = EditorState.create({ doc, extensions: [javascript({ typescript: true })] });
    const at = doc.lastIndexOf(name) + 1;
    expect(nameAt(state, at, known(file, skirt))?.meaning.signature).toContain(signature);
  });
});
