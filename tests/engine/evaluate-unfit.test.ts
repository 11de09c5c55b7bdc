import { describe, expect, test } from 'vitest';
import { garmentFaults } from '../../engine/checks/garment-faults.ts';
import { evaluate } from '../../engine/evaluate.ts';
import type { Draft } from '../../engine/pattern/draft.ts';
import { bib, measurements } from './bib.ts';
import { smallGarment } from './render/small-garment.ts';

/** A bib that hands back an edge without curves, as no compiler would let it. */
const unfit: Draft = {
  ...bib,
  placeOf: (words) => (words.includes('draw') ? { file: 'bib.ts', line: 7 } : undefined),
  draw: (body, styling) => {
    const drawn = bib.draw(body, styling);
    if (!drawn.ok) return drawn;
    const [first, ...others] = drawn.value.pieces;
    const pieces = [{ ...first, edges: undefined }, ...others] as unknown as typeof drawn.value.pieces;
    return { ...drawn, value: { ...drawn.value, pieces } };
  },
};

describe('what a draft hands back that is no garment', () => {
  test('is refused by name with the line of its source, where the draft came from a file', () => {
    const made = evaluate(unfit, measurements);
    expect(made.ok).toBe(false);
    expect(made.issues).toContainEqual(
      expect.objectContaining({ code: 'draft-garment-unfit', source: { file: 'bib.ts', line: 7 } }),
    );
  });

  test('is a fault of the program where the draft is one of its own', () => {
    const { placeOf: _, ...own } = unfit;
    expect(() => evaluate(own, measurements)).toThrow();
  });

  test('is told with the piece, the edge and the field', () => {
    expect(garmentFaults(smallGarment)).toEqual([]);
    const [first, ...others] = smallGarment.pieces;
    const [edge, ...rest] = first?.edges ?? [];
    const pieces = [{ ...first, edges: [{ ...edge, allowance: 'wide' }, ...rest] }, ...others];
    const [fault] = garmentFaults({ ...smallGarment, pieces });
    expect(fault).toMatchObject({ code: 'draft-garment-unfit', path: `${first?.name}/${edge?.name}` });
    expect(fault?.message).toContain('allowance');
  });
});
