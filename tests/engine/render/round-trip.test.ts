import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { dress } from '../../../drafts/dress.ts';
import { evaluate } from '../../../engine/evaluate.ts';
import type { Draft } from '../../../engine/pattern/draft.ts';
import { walkSheet } from '../../../engine/reading/walk-sheet.ts';
import { sheetSvg } from '../../../engine/render/sheet.ts';
import { pieceSvgs } from '../../../engine/render/svg.ts';

const draft: Draft = dress;

const drafted = (file: string) => {
  const found = evaluate(draft, parse(readFileSync(`measurements/${file}.yaml`, 'utf8')));
  if (!found.ok) throw new Error(JSON.stringify(found.issues));
  return found.value;
};

describe.each(['leading-lady', 'wardrobe-mistress', 'understudy'])(
  'the dress of %s, written and read',
  (file) => {
    const { garment, cutLines, report } = drafted(file);

    test.each(['slit', 'wedge'] as const)(
      'walks from its paths alone as it did in memory, %s notches',
      (notches) => {
        const walked = walkSheet(sheetSvg(garment, cutLines, { notches }));
        if (!walked.ok) throw new Error(JSON.stringify(walked.issues));
        expect(walked.value.issues).toEqual([]);
        for (const [i, seam] of report.seams.entries()) {
          const back = walked.value.seams[i];
          expect(back?.name).toBe(seam.name);
          expect(Math.abs((back?.lengthA ?? 0) - seam.lengthA)).toBeLessThan(0.001);
          expect(Math.abs((back?.lengthB ?? 0) - seam.lengthB)).toBeLessThan(0.001);
          expect(back?.mismatch).toBeLessThan(0.01);
        }
        for (const [i, girth] of report.girths.entries())
          expect(Math.abs((walked.value.girths[i]?.finished ?? 0) - girth.finished)).toBeLessThan(0.001);
        for (const [i, join] of report.joins.entries())
          expect(Math.abs((walked.value.joins[i]?.angle ?? 90) - join.angle)).toBeLessThan(0.01);
      },
    );

    test('has the shapes that were measured in memory, each to 0.02 of its unit and bends to 1e-8 per mm, but for what only the draft knows', () => {
      const walked = walkSheet(sheetSvg(garment, cutLines, { notches: 'slit' }));
      if (!walked.ok) throw new Error(JSON.stringify(walked.issues));
      const onPaper = garment.shapes.filter(({ kind }) => kind !== 'drafted').map(({ name }) => name);
      expect(walked.value.shapes.map(({ name }) => name)).toEqual(onPaper);
      for (const shape of walked.value.shapes) {
        const before = report.shapes.find(({ name }) => name === shape.name);
        expect(shape, shape.name).toEqual({
          ...before,
          // Of notches equally deep, and of a notch on the limit, a digit decides.
          piece: expect.any(String),
          ok: expect.any(Boolean),
          value: expect.any(Number),
        });
        // Of an edge that hardly bends, a digit is much of its radius.
        const within = shape.name.includes('tightest bend') ? Math.max(0.02, shape.value ** 2 * 1e-8) : 0.02;
        expect(Math.abs(shape.value - (before?.value ?? Number.NaN)), shape.name).toBeLessThan(within);
      }
    });

    test('has notches that cut nothing where they are wedges', () => {
      const walked = walkSheet(sheetSvg(garment, cutLines, { notches: 'wedge' }));
      if (!walked.ok) throw new Error(JSON.stringify(walked.issues));
      const deepest = walked.value.shapes.find(({ name }) => name === 'deepest notch');
      expect(deepest?.value).toBe(0);
    });

    test('finds room on every piece for its whole label', () => {
      for (const text of pieceSvgs(garment, cutLines, { date: '4 May' }).values()) {
        expect(text).toMatch(/>cut \d/);
        expect(text).toMatch(/allowance/);
        expect(text).toContain(`for ${garment.body}, 4 May`);
      }
    });
  },
);
