import { describe, expect, test } from 'vitest';
import { evaluate } from '../../engine/evaluate.ts';
import { bib, measurements } from './bib.ts';

describe('evaluating', () => {
  test('gives the body, the styling, the pieces, their cutting lines and the checks', () => {
    const found = evaluate(bib, measurements, { misfit: '0' });
    if (!found.ok) throw new Error(JSON.stringify(found.issues));
    const { body, styling, garment, cutLines, report } = found.value;
    expect(body.size.bustGirth).toBeCloseTo(920, 9);
    expect(styling).toEqual({ misfit: 0, notchType: 'slit', mood: 'good' });
    expect([...cutLines.keys()]).toEqual(garment.pieces.map(({ name }) => name));
    expect(report).toMatchObject({ ok: true, garment: 'bib', body: 'prompter' });
  });

  test('says what is wrong with the body and with the styling in one answer', () => {
    const found = evaluate(bib, { ...measurements, waistGirth: 'slim' }, { misfit: 99, pockets: 2 });
    expect(found.ok).toBe(false);
    expect(found.issues.map(({ path }) => path)).toEqual(
      expect.arrayContaining(['waistGirth', 'misfit', 'pockets']),
    );
  });

  test('passes on why a garment could not be drafted', () => {
    const found = evaluate(bib, measurements, { mood: 'bad' });
    expect(found.ok).toBe(false);
    expect(found.issues).toContainEqual(expect.objectContaining({ code: 'own-no-bib' }));
  });

  test('is a success that is not true when a check fails', () => {
    const found = evaluate(bib, measurements, { misfit: 3 });
    expect(found.ok && found.value.report.ok).toBe(false);
    expect(found.issues.map(({ path }) => path)).toContain('princess seam');
  });

  test('gives a garment by the name of its draft, be it drawn by that of another', () => {
    const found = evaluate({ ...bib, name: 'my-bib' }, measurements);
    expect(found.ok && [found.value.garment.name, found.value.report.garment]).toEqual(['my-bib', 'my-bib']);
  });

  test('gives the same garment to the byte each time', () => {
    const [once, twice] = [1, 2].map(() => evaluate(bib, measurements));
    expect(JSON.stringify(once)).toBe(JSON.stringify(twice));
  });
});
