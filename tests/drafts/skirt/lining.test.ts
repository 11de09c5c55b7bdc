import { describe, expect, it } from 'vitest';
import { skirtRules } from '../../../drafts/skirt/rules.ts';
import type { Evaluation } from '../../../engine/evaluate.ts';
import { edgeLength } from '../../../engine/geometry/edge.ts';
import { drafted, edgeOf, pieceOf, shippedBodies, shippedBody } from '../drafted.ts';

const lady = shippedBody('leading-lady');
const gores = ['skirt centre front', 'skirt side front', 'skirt side back', 'skirt centre back'] as const;
const lined = drafted('skirt', lady, { skirtLining: 'lined' });

const lengthOf = (of: Evaluation, piece: string, edge: string): number => edgeLength(edgeOf(of, piece, edge));
const errors = (of: Evaluation): readonly string[] =>
  of.report.issues.filter(({ severity }) => severity === 'error').map(({ message }) => message);

describe('the lining of a skirt', () => {
  it('is left away unless it is chosen', () => {
    const names = drafted('dress', lady).garment.pieces.map(({ name }) => name);
    for (const gore of gores) expect(names).not.toContain(`${gore} lining`);
  });

  it.each(gores)('has the %s once more, of lining, as wide at the waist', (gore) => {
    const [own, lining] = [pieceOf(lined, gore), pieceOf(lined, `${gore} lining`)];
    expect(lining.cut).toEqual(own.cut.map((each) => ({ ...each, cloth: 'lining' })));
    expect(lengthOf(lined, lining.name, 'waist')).toBe(lengthOf(lined, gore, 'waist'));
  });

  // An inch shorter: common practice, no source.
  it.each([
    ['skirt centre front', 'front princess'],
    ['skirt side front', 'side'],
    ['skirt side back', 'back princess'],
    ['skirt centre back', 'centre back'],
  ])('hangs shorter along every seam by what its rule says: %s, %s', (gore, seam) => {
    const shorter = lengthOf(lined, gore, seam) - lengthOf(lined, `${gore} lining`, seam);
    expect(shorter).toBeCloseTo(skirtRules.liningShorter.value, 6);
  });

  it('has a narrow hem', () => {
    expect(edgeOf(lined, 'skirt side front lining', 'hem').allowance).toBe(skirtRules.liningHem.value);
  });

  it('closes to the waist and the hip of the skirt', () => {
    const girth = (level: string) => lined.report.girths.find((found) => found.level === level)?.finished;
    expect(girth('waist, lining')).toBeCloseTo(girth('waist') ?? 0, 6);
    expect(girth('hip, lining')).toBeCloseTo(girth('hip') ?? 0, 6);
    expect(girth('hem, lining')).toBeLessThan(girth('hem') ?? 0);
  });

  const ways = ['back', 'side'].flatMap((opening) =>
    ['lined', 'faced'].map((inside) => ({ opening, inside, skirtLining: 'lined' })),
  );

  it.each(ways)('is true and complete for all bodies: zip at the $opening, bodice $inside', (styling) => {
    for (const name of shippedBodies)
      expect(errors(drafted('dress', shippedBody(name), styling)), name).toEqual([]);
  });

  it.each(ways)('is open as far as the zip: at the $opening, bodice $inside', (styling) => {
    const dress = drafted('dress', lady, styling);
    const ends = dress.garment.pieces.flatMap(({ name, notches, edges }) =>
      notches.flatMap((notch) => {
        const edge = edges.find((candidate) => candidate.name === notch.edge);
        if (notch.name !== 'end of the zip' || !edge) return [];
        const fromWaist = styling.opening === 'side' ? notch.at : edgeLength(edge) - notch.at;
        return [{ name, fromWaist: Math.round(1e6 * fromWaist) / 1e6 }];
      }),
    );
    expect(ends.map(({ name }) => name).filter((name) => name.endsWith('lining'))).toHaveLength(
      ends.length / 2,
    );
    expect(new Set(ends.map(({ fromWaist }) => fromWaist)).size).toBe(1);
  });

  it('is caught at the waist before the bodice is, and felled to the zip in the end', () => {
    const dress = drafted('dress', lady, { skirtLining: 'lined' });
    const titles = dress.garment.sewing?.map(({ title }) => title) ?? [];
    const at = (title: string): number => {
      expect(titles).toContain(title);
      return titles.indexOf(title);
    };
    expect(at('Stitch the skirt lining to the skirt at the waist')).toBeLessThan(
      at('Join the skirt to the bodice'),
    );
    expect(at('Sew the centre back and set in the zip')).toBeLessThan(
      at('Sew the centre back of the skirt lining'),
    );
    expect(at('Hem the skirt')).toBeLessThan(at('Hem the skirt lining'));
    expect(at('Fell the skirt lining to the zip')).toBeGreaterThan(at('Hem the skirt lining'));
  });
});
