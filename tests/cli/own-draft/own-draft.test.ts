import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { joinedFiles } from '../../../cli/own-draft/draft-files.ts';
import { measurements } from '../../engine/bib.ts';
import { bodkin } from '../session.ts';

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bodkin-'));
});
afterAll(() => rm(folder, { recursive: true }));

const file = async (name: string, text: string): Promise<string> => {
  const path = join(folder, name);
  await writeFile(path, text);
  return path;
};

const apron = `
type Styling = { readonly depth: number };
export default {
  name: 'apron', title: 'Half apron', shapedBy: [],
  choices: [{ kind: 'number', name: 'depth', unit: 'mm', default: 500, min: 200, max: 900, help: 'to the hem' }],
  draw: (_: unknown, { depth }: Styling) =>
    ({ ok: false, issues: [{ code: 'no-tapes', severity: 'error', path: '', message: 'No cloth for ' + depth }] }),
};`;

describe('a draft from a file of one’s own', () => {
  it('is one more garment, in TypeScript, wherever it stands on the line', async () => {
    const path = await file('my-apron.ts', apron);
    const { code, out } = await bodkin(['--draft', path, 'list', 'apron']);
    expect(code).toBe(0);
    expect(out).toMatch(/^apron: Half apron\n/);
    const listed = await bodkin(['list', '--json', `--draft=${path}`]);
    const names = JSON.parse(listed.out).map(({ name }: { readonly name: string }) => name);
    expect(names).toEqual(['apron', 'bib']);
  });

  it('takes the place of the one of its name', async () => {
    const path = await file('my-bib.ts', apron.replace("name: 'apron'", "name: 'bib'"));
    const { out } = await bodkin(['list', '--json', '--draft', path]);
    const titles = JSON.parse(out).map(({ title }: { readonly title: string }) => title);
    expect(titles).toEqual(['Half apron']);
  });

  it('has its codes marked as its own, though no compiler has asked it to', async () => {
    const path = await file('my-apron.ts', apron);
    const body = await file('body.json', JSON.stringify(measurements));
    const { code, out } = await bodkin(['walk', 'apron', '--body', body, '--json', '--draft', path]);
    expect(code).toBe(2);
    const codes = JSON.parse(out).issues.map((issue: { readonly code: string }) => issue.code);
    expect(codes).toContain('own-no-tapes');
  });

  it('may be several files in one, each of which keeps its lines', async () => {
    const size =
      "import { DraftMistake } from '../engine/draft-mistake.ts';\nexport const size = (): number => 300;\n";
    const files = {
      'draft.ts': "export { apron as default } from './parts/apron.ts';\n",
      'parts/apron.ts': apron
        .replace('export default', "import { size } from './size.ts';\nexport const apron =")
        .replace('default: 500', 'default: size()'),
      'parts/size.ts': size.replace("'../engine/", "'../../engine/"),
    };
    const path = await file('several.ts', joinedFiles(files));
    const listed = await bodkin(['list', 'apron', '--draft', path]);
    expect(listed.code, listed.err).toBe(0);
    expect(listed.out).toContain('300');
    const broken = joinedFiles({
      ...files,
      'parts/size.ts': size.replace('=> 300', "=> {\n  throw new Error('here');\n}"),
    });
    const other = await file('broken.ts', broken);
    const { code, err } = await bodkin(['list', 'apron', '--draft', other]);
    expect(code).toBe(2);
    const line = broken.split('\n').findIndex((each) => each.includes("Error('here')")) + 1;
    expect(err).toContain(`broken.ts:${line}`);
  });

  it.each([
    ['no file', [], 'draft-missing'],
    ['a file that is not there', ['none.ts'], 'draft-not-loaded'],
  ])('is asked for in words where there is %s', async (_, words, code) => {
    const ran = await bodkin(['list', '--json', '--draft', ...words]);
    expect(ran.code).toBe(2);
    expect(JSON.parse(ran.out).issues[0].code).toBe(code);
  });

  it('is told what it should export where it exports something else', async () => {
    const path = await file('other.ts', 'export default 3;');
    const { code, err } = await bodkin(['list', '--draft', path]);
    expect(code).toBe(2);
    expect(err).toContain('export default defineDraft(');
  });
});
