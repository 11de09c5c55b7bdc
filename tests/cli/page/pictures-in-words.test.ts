import { readFile } from 'node:fs/promises';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { answer } from '../../../cli/page/answers.ts';
import type { MadeGarment, PageAnswer, PageRequest } from '../../../cli/page/messages.ts';
import { nestFaults } from '../../../cli/page/requests/nest-words.ts';
import { wrongPieces } from '../../../cli/page/requests/wrong-pieces.ts';
import { emptyState, type PageState } from '../../../cli/page/state.ts';
import { pieceWords, sheetWords } from '../../../cli/page/views/drawing/piece-words.ts';
import { toldSize } from '../../../cli/page/views/measure/told-size.ts';
import { wornWords } from '../../../cli/wear/worn-words.ts';
import type { Evaluation } from '../../../drafts/index.ts';
import { evaluate, garments } from '../../../drafts/index.ts';
import type { Judged } from '../../../engine/wear/judged.ts';
import { bib, measurements } from '../../engine/bib.ts';

/* What a picture is to who cannot see it: what it shows, how large that is, and what is wrong with it. */

const understudy = parse(
  await readFile(new URL('../../../measurements/understudy.yaml', import.meta.url), 'utf8'),
);

const answers = async (request: PageRequest): Promise<readonly PageAnswer[]> => {
  const all: PageAnswer[] = [];
  await answer(request, (one) => all.push(one));
  return all;
};

async function dress(choices: Readonly<Record<string, string>> = {}): Promise<MadeGarment> {
  const [drafted] = await answers({
    ...{ kind: 'draft', number: 1, body: understudy, garment: 'dress', choices, parts: ['lines'] },
  });
  if (drafted?.kind !== 'drafted' || !drafted.made) throw new Error('not drafted');
  return drafted.made;
}

const made = (result: ReturnType<typeof evaluate>): Evaluation => {
  if (!result.ok) throw new Error('not drafted');
  return result.value;
};

const piece = ({ parts }: MadeGarment, name: string) => {
  const found = parts.lines?.find((each) => each.name === name);
  if (!found) throw new Error(`no ${name}`);
  return found;
};

describe('a piece in words', () => {
  test('is its number, its name and its size, and says where nothing is wrong with it', async () => {
    const all = await dress();
    const { width, height } = piece(all, 'sleeve');
    const cm = (mm: number): string => `${Math.round(mm / 10)} cm`;
    expect(pieceWords(piece(all, 'sleeve'), all)).toBe(
      `Piece 8, sleeve, ${cm(width)} wide and ${cm(height)} high. Nothing is wrong with it.`,
    );
  });

  test('has each shape of it that lies outside its band, with what is usual', async () => {
    const all = await dress();
    const outside = all.checks.shapes.filter(({ ok, cells }) => !ok && cells[1] === 'side front');
    expect(outside.length).toBeGreaterThan(0);
    const words = pieceWords(piece(all, 'side front'), all);
    expect(words).toContain('It fails no check. Outside its band: ');
    for (const { cells } of outside) expect(words).toContain(`${cells[0]} is ${cells[2]}`);
    expect(words).toMatch(/front shoulder slope is [\d.]+°, where [\d.]+° to [\d.]+° is usual/);
    expect(sheetWords(all, 20)).toMatch(/None fails a check\. Shapes outside their bands: .*side front/);
  });

  test('has the check that a seam of it fails, on both pieces that meet there and on no other', () => {
    const { report, garment } = made(evaluate(bib, measurements, { misfit: '2' }));
    const wrong = wrongPieces(report, garment, 'mm');
    const error = report.issues.find(({ code }) => code === 'seam-does-not-walk');
    const seam = report.seams.find(({ name }) => name === error?.path);
    const meeting = [...(seam?.a ?? []), ...(seam?.b ?? [])].map((edge) => edge.piece);
    const failing = wrong.filter(({ fails }) => fails.length > 0);
    expect(failing.map((each) => each.piece).toSorted()).toEqual([...new Set(meeting)].toSorted());
    for (const { fails } of failing) expect(fails.join()).toContain(error?.message);
    const all = { wrong, units: 'mm' } as unknown as MadeGarment;
    const [first] = garment.pieces.filter(({ name }) => name === meeting[0]);
    const shown = { name: first?.name ?? '', number: 1, width: 100, height: 200 };
    expect(pieceWords(shown as Parameters<typeof pieceWords>[0], all)).toContain(
      `It fails: ${error?.message}`,
    );
  });

  test('has what is wrong with the piece itself, or with an edge of it, but no note', () => {
    const { report, garment } = made(evaluate(garments.skirt, understudy, {}));
    const [first] = garment.pieces;
    const name = first?.name ?? '';
    const issue = (path: string, severity: 'error' | 'note') => ({
      ...({ code: 'no-area', path, severity, message: `of ${path}` } as const),
    });
    const issues = [
      issue(name, 'error'),
      issue(`${name}/hem`, 'error'),
      issue(`${name}s`, 'error'),
      issue(name, 'note'),
    ] as unknown as typeof report.issues;
    const wrong = wrongPieces({ ...report, issues, shapes: [] }, garment, 'mm');
    expect(wrong).toEqual([{ piece: name, fails: [`of ${name}`, `of ${name}/hem`], outside: [] }]);
  });
});

describe('a nest in words', () => {
  test('names the uneven steps of its piece, at which sizes they are, and sizes that are not true', async () => {
    const chart = await readFile(
      new URL('../../../measurements/charts/en-13402-3-women.yaml', import.meta.url),
      'utf8',
    );
    const told = await answers({
      ...{ kind: 'sizes', number: 1, does: 'grade' },
      asked: { body: understudy, garment: 'skirt', choices: {} },
      chart: { file: 'en-13402-3-women.yaml', text: chart, units: '', bodies: [] },
    });
    const graded = told.at(-1);
    if (graded?.kind !== 'graded' || !graded.grade) throw new Error('not graded');
    const [drawn] = await answers({
      ...{ kind: 'sizes', number: 1, does: 'nest', piece: graded.grade.pieces[0] ?? '' },
      ...{ size: graded.grade.middle.size, cup: '', along: 'sizes', line: 'stitching', beside: true },
    });
    if (drawn?.kind !== 'nest drawn' || !drawn.nest) throw new Error('not drawn');
    const { words, uneven } = drawn.nest;
    expect(words).toContain(uneven.length === 0 ? 'Every step is even.' : 'Uneven steps: ');
    expect(words).not.toContain('Not true');
  }, 60_000);

  test('tells six of them and how many more there are', () => {
    const uneven = (what: string, name: string) =>
      ({ piece: 'gore', what, quantity: 'length', name }) as Parameters<typeof nestFaults>[0][number];
    const sizes = [
      { of: { name: '40' }, made: { report: { ok: true } } },
      { of: { name: '42' }, made: { report: { ok: false } } },
    ];
    const grade = { sizes } as unknown as Parameters<typeof nestFaults>[1];
    expect(
      nestFaults([uneven('hem', '40'), uneven('hem', '42'), uneven('top', '42')], grade, 'gore', ['40']),
    ).toBe('Uneven steps: hem, length at 40 and 42; top, length at 42.');
    const many = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'].map((edge) => uneven(edge, '40'));
    expect(nestFaults(many, grade, 'gore', ['42'])).toMatch(/f, length at 40; and 2 more\. Not true: 42\.$/);
    expect(nestFaults(many, grade, 'another', [])).toBe('Every step is even.');
  });
});

describe('a plan of cloth in words', () => {
  test('is its use, and whether every piece is placed', async () => {
    const told = await answers({
      ...{ kind: 'lay', number: 1, does: 'begin', seconds: 600, rounds: 5 },
      asked: { body: understudy, garment: 'skirt', choices: {} },
      cloth: {
        ...{ cloth: 'folded', width: '1400', stripe: '0', stripeAlong: '0', selvedge: '0', gap: '0' },
        shrink: '0',
      },
    });
    const laid = told.find((one) => one.kind === 'laid');
    if (laid?.kind !== 'laid') throw new Error('not laid');
    const [plan] = laid.plans;
    expect(plan?.alt).toMatch(/^Plan of the cloth: \d+ pieces on the cloth: .* [\d.]+ % used/);
    expect(plan?.alt).toMatch(/Every piece is placed, and none overlaps another\.$/);
  }, 60_000);
});

describe('what is worn, in words', () => {
  const found = {
    ...{ finding: 'ease at the waist', unit: 'mm', worn: 12, should: 40, within: 5 },
    ...{ restsOn: 'measurements', verdict: 'off' },
  } as unknown as Judged;

  test('has what a fitter would say, first what is sure', () => {
    const perhaps = { ...found, finding: 'bust point above hers', verdict: 'perhaps' } as Judged;
    expect(wornWords('bodice worn by understudy', [perhaps, found], 'cm')).toBe(
      'bodice worn by understudy. Off: ease at the waist: 1.2 cm, where 4 cm would sit well; sure to ± 0.5 cm. ' +
        'Perhaps: bust point above hers: 1.2 cm, where 4 cm would sit well; sure to ± 0.5 cm.',
    );
  });

  test('says where there is nothing to say', () => {
    const well = { ...found, verdict: 'well' } as Judged;
    expect(wornWords('skirt worn by prompter', [well], 'cm')).toBe(
      'skirt worn by prompter. Nothing is outside its band.',
    );
  });
});

describe('the tape on the figure, in words', () => {
  const state: PageState = {
    ...emptyState,
    form: { ...emptyState.form, units: 'cm', sizes: { hipGirth: '60' } },
    answer: {
      kind: 'drafted',
      number: 1,
      issues: [
        { code: 'unlikely', severity: 'warning', path: 'hipGirth', message: 'The hip is below the waist.' },
        { code: 'noted', severity: 'note', path: 'hipGirth', message: 'Only noted.' },
      ] as unknown as NonNullable<PageState['answer']>['issues'],
      sizes: { scyeDepth: { text: '20.1', from: 'estimated', spread: '1.2' } } as unknown as NonNullable<
        NonNullable<PageState['answer']>['sizes']
      >,
    },
  };

  test('is how much was written, and what is wrong with that', () => {
    expect(toldSize(state, 'hipGirth')).toEqual({ amount: '60 cm', wrong: ['The hip is below the waist.'] });
  });

  test('is an estimate where nothing was', () => {
    expect(toldSize(state, 'scyeDepth')).toEqual({ amount: 'estimated 20.1 cm', wrong: [] });
  });
});
