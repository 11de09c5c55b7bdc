import { describe, expect, test } from 'vitest';
import { measurementNames } from '../../../engine/body/body.ts';
import { compareDrafts } from '../../../engine/comparison/compare.ts';
import { draftedNow, type KnownDraft } from '../../../engine/comparison/known-draft.ts';
import { sameDraft } from '../../../engine/comparison/same-draft.ts';
import { sheetDraft } from '../../../engine/comparison/sheet-draft.ts';
import type { Evaluation } from '../../../engine/evaluate.ts';
import { sheetSvg } from '../../../engine/render/sheet.ts';
import { drafted, shippedBody } from '../../drafts/drafted.ts';

const body = shippedBody('leading-lady');
const of = (styling: Record<string, number | string> = {}, given: object = body): Evaluation =>
  drafted('dress', given, styling);

const now = of();
const known = draftedNow(now);

const written = ({ garment, cutLines }: Evaluation): KnownDraft => {
  const read = sheetDraft(sheetSvg(garment, cutLines));
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.value;
};

/** Whatever differs between two drafts by more than this. */
function differing(before: KnownDraft, after: KnownDraft, by: number): readonly string[] {
  const { pieces, seams, girths, shapes, joins, notions, styling, measurements } = compareDrafts(
    before,
    after,
  );
  const numbers = (item: object): readonly number[] =>
    Object.values(item).filter((value) => typeof value === 'number');
  const lists: readonly (readonly { readonly name: string; readonly kind: string }[])[] = [
    seams,
    girths,
    shapes,
    joins,
    notions,
    styling,
    measurements,
  ];
  const figures = lists.flat().flatMap((fate) => {
    if (!('before' in fate && 'after' in fate)) return [`${fate.name} ${fate.kind}`];
    const [was, is] = [numbers(fate.before as object), numbers(fate.after as object)];
    return was.some((value, i) => Math.abs(value - (is[i] ?? Infinity)) > by) ? [fate.name] : [];
  });
  const moved = pieces.flatMap((move) => {
    if (move.kind !== 'redrawn') return [`${move.piece} ${move.kind}`];
    const parts = [...move.edges, ...move.notches, ...move.inside];
    const far = Math.max(move.stitchingLine, move.cuttingLine ?? Infinity, Math.abs(move.grain));
    return far > by || parts.some((part) => part.kind !== 'redrawn') ? [move.piece] : [];
  });
  return [...figures, ...moved];
}

describe('two drafts compared', () => {
  // What is written is rounded to 1e-6 mm: a sheet read back is the draft it was written from. The radius of a slight bend,
  // known to 1e-8 per mm, is off the most.
  test('differ in nothing where one is the written sheet of the other', () => {
    expect(differing(written(now), known, 0.03)).toEqual([]);
    expect(differing(known, known, 1e-9)).toEqual([]);
  });

  test('differ in what another styling changes, and in nothing else', () => {
    const { styling, girths, pieces, measurements } = compareDrafts(
      draftedNow(of({ skirtLength: 700, hemAllowance: 50 })),
      draftedNow(of({ skirtLength: 720, hemAllowance: 40 })),
    );
    const changed = styling.filter((fate) => fate.kind !== 'kept' || fate.before.value !== fate.after.value);
    expect(changed.map(({ name }) => name)).toEqual(['skirtLength', 'hemAllowance']);
    expect(measurements.every((fate) => fate.kind === 'kept' && fate.before.value === fate.after.value)).toBe(
      true,
    );
    expect(girths.length).toBe(now.report.girths.length);
    const hem = pieces.flatMap((move) =>
      move.kind === 'redrawn' && move.piece.startsWith('skirt')
        ? move.edges.filter(({ edge }) => edge === 'hem')
        : [],
    );
    expect(hem.length).toBeGreaterThan(0);
    for (const edge of hem)
      if (edge.kind === 'redrawn') expect(edge.allowance).toEqual({ before: 50, after: 40 });
    const still = pieces.filter((move) => move.kind === 'redrawn' && move.stitchingLine < 1e-6);
    expect(still.map(({ piece }) => piece)).toContain('side front');
  });

  test('differ in pieces that came and went, and their seams', () => {
    const { pieces, seams, notions } = compareDrafts(known, draftedNow(of({ sleeve: 'none' })));
    expect(pieces.filter(({ kind }) => kind === 'gone').map(({ piece }) => piece)).toEqual(['sleeve']);
    const gone = seams.filter(({ kind }) => kind === 'gone').map(({ name }) => name);
    expect(gone).toContain('armhole, crown');
    expect(notions.some(({ kind }) => kind === 'gone')).toBe(true);
  });

  test('differ in a measurement and in the girths that follow it', () => {
    const waist = { ...body, waistGirth: 76 };
    const { measurements, girths, fitting } = compareDrafts(
      known,
      draftedNow(of({}, { ...waist, fitting: [{ 'shorten strap': 1 }, { 'shorten strap': 0.5 }] })),
    );
    const changed = measurements.flatMap((fate) =>
      fate.kind === 'kept' && fate.before.from === 'measured' && fate.before.value !== fate.after.value
        ? [[fate.name, fate.after.value - fate.before.value]]
        : [],
    );
    expect(changed).toEqual([['waistGirth', expect.closeTo(20, 9)]]);
    expect(fitting).toEqual([
      { kind: 'new', name: 'shorten strap', only: { change: 'shorten strap', mm: 15 } },
    ]);
    const at = girths.find(({ name }) => name === 'waist');
    if (at?.kind !== 'kept') throw new Error('no waist');
    expect(at.after.finished - at.before.finished).toBeCloseTo(20, 3);
  });

  test('name what of one of them is not known, and say nothing of it', () => {
    const { styling, measurements, notCompared, shapes } = compareDrafts(written(now), known);
    expect(styling).toEqual([]);
    // A sheet says whom it was drafted for, but not where that came from.
    expect(measurements.map(({ name }) => name)).toEqual(measurementNames);
    const named = notCompared.map(({ what }) => what);
    expect(named[0]).toBe('styling');
    const { drawnFor: _was, ...aged } = now.garment;
    const old = compareDrafts(written({ ...now, garment: aged }), known);
    expect(old.measurements).toEqual([]);
    expect(old.notCompared.slice(0, 2).map(({ what }) => what)).toEqual([
      'measurements and fitting',
      'styling',
    ]);
    const drawn = now.garment.shapes.filter(({ kind }) => kind === 'drafted').map(({ name }) => name);
    expect(drawn.length).toBeGreaterThan(0);
    expect(shapes.map(({ name }) => name).filter((name) => drawn.includes(name))).toEqual([]);
    for (const name of drawn) expect(named.join()).toContain(name);

    const { sheet: _, ...figures } = known;
    const without = compareDrafts(figures, known);
    expect(without.pieces).toEqual([]);
    expect(without.notCompared[0]).toMatchObject({ what: expect.stringContaining('outlines') });
  });

  test('have every seam, girth and shape once, by its name', () => {
    for (const { seams, girths, shapes, joins } of [
      now,
      of({}, { ...body, fitting: [{ 'shorten strap': 1, side: 'left' }] }),
    ].map(({ report }) => report))
      for (const names of [seams, shapes, joins]
        .map((list) => list.map(({ name }) => name))
        .concat([girths.map(({ level }) => level)]))
        expect(names.toSorted()).toEqual([...new Set(names)].toSorted());
  });

  test('are one where garment, wearer and seams agree', () => {
    expect(sameDraft(written(now), known)).toBe(true);
    expect(sameDraft(draftedNow(of({ necklineDepth: 0.5 })), known)).toBe(false);
    expect(sameDraft({ ...known, body: 'understudy' }, known)).toBe(false);
  });
});

describe('an earlier sheet', () => {
  const svg = sheetSvg(now.garment, now.cutLines);
  const codes = (text: string): readonly string[] => sheetDraft(text).issues.map(({ code }) => code);

  test('may be drawn in the style of another version, but not so that lines are moved or hidden', () => {
    expect(codes(svg.replace('.cut{', '.cut{stroke-linecap:round;'))).toEqual([]);
    for (const style of ['transform:scale(2);', 'display:none;', 'd:path("M0 0");', '}@import "x";.a{'])
      expect(codes(svg.replace('.cut{', `.cut{${style}`))).toContain('drawn-otherwise');
  });

  test('is read as it is now where its claims were changed, with a warning', () => {
    expect(codes(svg.replace('"ease":0', '"ease":1'))).toEqual(['edited-since-written']);
  });
});
