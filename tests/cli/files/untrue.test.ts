import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { answerOrder } from '../../../cli/orders/answer.ts';
import type { DraftAnswer, MadeGarment } from '../../../cli/page/messages.ts';
import { emptyState, type PageState, taken } from '../../../cli/page/state.ts';
import { bib, measurements } from '../../engine/bib.ts';
import { bodkin } from '../session.ts';
import { commandFolder } from '../temporary-folder.ts';

const given = commandFolder();
const untrue = ['--set', 'misfit=2'];
const chart = `units: cm\nsizes:\n  - ${JSON.stringify({ ...measurements, size: '40', name: undefined, units: undefined })}\n`;

describe('a garment that can be drawn and fails a check of its own', () => {
  it.each([
    ['draft', ['--body', 'BODY', '--out', 'OUT']],
    ['draft', ['--body', 'BODY', '--out', 'OUT', '--also', 'dxf']],
    ['print', ['--body', 'BODY', '--out', 'OUT/bib.pdf', '--paper', 'a4']],
    ['sew', ['--body', 'BODY', '--out', 'OUT']],
    ['teach', ['--body', 'BODY', '--out', 'OUT']],
    ['wear', ['--body', 'BODY', '--out', 'OUT']],
    ['lay', ['--body', 'BODY', '--out', 'OUT', '--width', '1400']],
    ['lay', ['--sizes', 'CHART', '--out', 'OUT', '--width', '1400']],
    ['grade', ['--sizes', 'CHART', '--out', 'OUT']],
    ['draft', ['--bodies', 'BODIES', '--out', 'OUT']],
  ])(
    'is refused by %s %j: the check, its place, and what would do, nothing written',
    async (command, words) => {
      await writeFile(join(given.folder, 'chart.yaml'), chart);
      await writeFile(join(given.folder, 'bodies.jsonl'), JSON.stringify(measurements));
      const places = {
        BODY: given.body,
        OUT: given.out,
        CHART: join(given.folder, 'chart.yaml'),
        BODIES: join(given.folder, 'bodies.jsonl'),
      };
      const said = words.map((word) =>
        Object.entries(places).reduce((text, [from, to]) => text.replace(from, to), word),
      );
      const ran = await bodkin([command, 'bib', ...said, ...untrue]);
      expect(ran.code).toBe(2);
      expect(ran.err).toMatch(/1 check of the bib for .* fails, so it is not written: “.*princess seam.*”/);
      expect(ran.err).toContain('This would do: misfit 0 mm instead of 2 mm.');
      expect(ran.err).toMatch(/princess seam.*1\.21 mm too short/);
      expect(await readdir(given.folder)).not.toContain('out');
    },
  );

  it('is told as data, the refusal first and then what every check has to say', async () => {
    const words = ['draft', 'bib', '--body', given.body, '--out', given.out, '--json', ...untrue];
    const { ok, issues } = JSON.parse((await bodkin(words)).out);
    expect(ok).toBe(false);
    expect(issues.map(({ code }: { code: string }) => code)).toEqual(
      expect.arrayContaining(['draft-not-true', 'seam-does-not-walk']),
    );
    expect(issues[0].code).toBe('draft-not-true');
  });

  it('is still walked, figure by figure', async () => {
    const ran = await bodkin(['walk', 'bib', '--body', given.body, ...untrue]);
    expect(ran.code).toBe(1);
    expect(ran.out).toContain('NOT TRUE');
    expect(ran.err).not.toContain('not written');
  });

  it('leaves what was there before as it was', async () => {
    await bodkin(['draft', 'bib', '--body', given.body, '--out', given.out]);
    const before = await readFile(join(given.out, 'sheet.svg'), 'utf8');
    const ran = await bodkin(['draft', 'bib', '--body', given.body, '--out', given.out, ...untrue]);
    expect(ran.code).toBe(2);
    expect(await readFile(join(given.out, 'sheet.svg'), 'utf8')).toBe(before);
  });

  it('is refused by whoever works off orders, and no file is handed back', async () => {
    const order = { id: 'a', body: measurements, draft: bib, paper: 'a4' } as const;
    const asked = { ...order, styling: { misfit: 2 }, write: ['report', 'svg'] } as const;
    const answer = await answerOrder(asked);
    expect(answer).toMatchObject({ drafted: false, ok: false, files: {} });
    expect(answer.issues[0]?.code).toBe('draft-not-true');
    const walked = await answerOrder({ ...asked, write: [] });
    expect(walked).toMatchObject({ drafted: true, ok: false });
    expect(Object.keys((await answerOrder({ ...asked, styling: {} })).files)).toContain('sheet.svg');
  });

  it('cannot be taken from the page, whose checks still show it', () => {
    const made = {
      ok: false,
      garment: 'bib',
      parts: { files: [{ name: 'sheet.svg', text: '' }] },
    } as unknown as MadeGarment;
    const state: PageState = {
      ...emptyState,
      answer: { kind: 'drafted', number: 0, issues: [], made },
      made,
    };
    expect(taken(state)).toBeUndefined();
    expect(
      taken({ ...state, answer: { ...state.answer, made: { ...made, ok: true } } as DraftAnswer }),
    ).toBeDefined();
  });
});
