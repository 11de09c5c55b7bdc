import { describe, expect, it } from 'vitest';
import { garments } from '../../drafts/garments.ts';
import { type FittingChange, fittedLevels, fittedSeams } from '../../engine/body/fitting.ts';
import { edgeEnd } from '../../engine/geometry/edge.ts';
import type { Garment } from '../../engine/pattern/garment.ts';
import { plausibleBodies } from '../plausible-bodies.ts';
import { drafted } from './drafted.ts';
import { before, girth } from './fitted.ts';

/** Each seam pinned at each of its levels, mm: changes that stand on one body and undo each other. */
const allSeams = (kind: 'take in' | 'let out', mm: number) =>
  fittedSeams.flatMap((seam) => fittedLevels[seam].map((level) => ({ [kind]: seam, level, by: mm })));

describe('the dress of any plausible body', () => {
  const asMeasured = plausibleBodies(12).map((body) => ({ body, plain: drafted('dress', body) }));

  it.each([
    ['take in', -1],
    ['let out', 1],
  ] as const)(
    'keeps every check true where all seams are to %s, and has the girths asked for',
    (kind, sign) => {
      for (const { body, plain } of asMeasured) {
        const after = drafted('dress', { ...body, fitting: allSeams(kind, 4) });
        expect(
          after.report.issues.filter(({ severity }) => severity === 'error'),
          String(body.name),
        ).toEqual([]);
        expect(girth(after, 'hip') - girth(plain, 'hip')).toBeCloseTo(sign * 4 * 14, 4);
        expect(girth(after, 'waist') - girth(plain, 'waist')).toBeCloseTo(sign * 4 * 14, 4);
      }
    },
  );

  it('keeps every check true for a back that gapes, is round and hollow under the waist', () => {
    const fitting = [
      { 'wedge from back neckline': 8 },
      { 'wedge from back armhole': 6 },
      { 'round back': 10 },
      { 'broad back': 12 },
      { 'sway back': 8 },
      { 'sway back in skirt': 10 },
    ];
    for (const { body } of asMeasured) {
      const { report } = drafted('dress', { ...body, fitting });
      expect(
        report.issues.filter(({ severity }) => severity === 'error'),
        String(body.name),
      ).toEqual([]);
    }
  });
});

describe('changes that undo each other', () => {
  /** The leading lady's dress drawn with changes that a file may not hold together. */
  function drawn(fitting: readonly FittingChange[]): Garment {
    const dress = garments.find(({ name }) => name === 'dress');
    const result = dress?.draw({ ...before.body, fitting }, before.styling);
    if (!result?.ok) throw new Error('no dress');
    return result.value;
  }

  const ends = (garment: Garment) =>
    garment.pieces.flatMap((piece) =>
      piece.edges.flatMap((edge) => {
        const { x, y } = edgeEnd(edge);
        return [x, y];
      }),
    );

  it('leave the dress as it was', () => {
    const both: readonly FittingChange[] = [
      ...fittedSeams.flatMap((seam) =>
        fittedLevels[seam].flatMap((level) =>
          (['take in', 'let out'] as const).map((kind) => ({ kind, seam, level, mm: 6 })),
        ),
      ),
      { kind: 'broad back', mm: 14 },
      { kind: 'narrow back', mm: 14 },
    ];
    const was = ends(before.garment);
    for (const [i, value] of ends(drawn(both)).entries()) expect(value).toBeCloseTo(was[i] ?? Number.NaN, 6);
  });
});
