import { describe, expect, it } from 'vitest';
import type { Evaluation } from '../../engine/evaluate.ts';
import type { EdgeRef } from '../../engine/pattern/seam.ts';
import { drafted, edgeOf, shippedBodies, shippedBody } from './drafted.ts';

const lady = shippedBody('leading-lady');
const dress = drafted('dress', lady);

const errors = ({ report }: Evaluation) => report.issues.filter(({ severity }) => severity === 'error');

/** Every edge of a garment with its allowance, as `piece/edge`. */
const allowancesOf = ({ garment }: Evaluation): ReadonlyMap<string, number> =>
  new Map(
    garment.pieces.flatMap((piece) =>
      piece.edges.map(({ name, allowance }) => [`${piece.name}/${name}`, allowance] as const),
    ),
  );

/** Edges of the dress that another value of one choice changes. */
function changedBy(styling: Readonly<Record<string, unknown>>, against: Evaluation = dress, base = {}) {
  const before = allowancesOf(against);
  const after = allowancesOf(drafted('dress', lady, { ...base, ...styling }));
  return [...after]
    .filter(([edge, width]) => Math.abs(width - (before.get(edge) ?? 0)) > 1e-9)
    .map(([edge]) => edge);
}

describe('allowances by kind of edge', () => {
  it('are narrow at neck and armhole, wider at the side and the centre back, widest at the zip and the hem', () => {
    const width = (piece: string, edge: string) => edgeOf(dress, piece, edge).allowance;
    expect(width('centre back', 'neckline')).toBeLessThan(width('side front', 'armhole underarm'));
    expect(width('side front', 'armhole underarm')).toBeLessThan(width('side front', 'princess upper'));
    expect(width('side front', 'princess upper')).toBeLessThan(width('side front', 'side'));
    expect(width('side front', 'side')).toBeLessThan(width('centre back', 'centre back'));
    expect(width('skirt side front', 'hem')).toBe(40);
  });

  it.each([
    [
      'sideAllowance',
      24,
      ['side front/side', 'side back/side', 'skirt side front/side', 'skirt side back/side'],
    ],
    [
      'armholeAllowance',
      12,
      ['side back/armhole upper', 'front strap/outer', 'sleeve/crown', 'sleeve/cap back underarm'],
    ],
    ['necklineAllowance', 10, ['centre back/neckline', 'centre back lining/neckline', 'front strap/inner']],
    ['zipAllowance', 30, ['centre back/centre back', 'skirt centre back/centre back']],
    ['hemAllowance', 30, ['skirt centre front/hem', 'skirt side front/hem']],
    ['sleeveHemAllowance', 40, ['sleeve/hem']],
  ])('%s changes its own edges', (name, value, edges) => {
    const changed = changedBy({ [name]: value });
    expect(changed).toEqual(expect.arrayContaining(edges));
    const stems = edges.map((edge) => edge.split('/')[1]?.split(' ')[0]);
    const allowed = new Set([...stems, 'outer', 'cap', 'crown', 'armhole']);
    expect(changed.filter((edge) => !allowed.has(edge.split('/')[1]?.split(' ')[0]))).toEqual([]);
  });

  it('are those of the zip at the side seam where the dress opens there', () => {
    const side = drafted('dress', lady, { opening: 'side' });
    expect(edgeOf(side, 'side front', 'side').allowance).toBe(25);
    expect(edgeOf(side, 'skirt side back', 'side').allowance).toBe(25);
    expect(edgeOf(side, 'centre back', 'centre back').allowance).toBeCloseTo(19.05, 9);
    expect(changedBy({ centreBackAllowance: 22 }, side, { opening: 'side' })).toContain(
      'skirt centre back/centre back',
    );
  });

  it.each([
    {},
    { sleeve: 'none' },
    { shoulder: 'whole', front: 'plain', neckline: 'round' },
    { shoulder: 'whole', front: 'plain', sleeve: 'none' },
  ])(
    'turn every free edge of every facing under as chosen, but for the ends felled at the zip: %o',
    (styling) => {
      const { garment } = drafted('dress', lady, { inside: 'faced', facingAllowance: 10, ...styling });
      const facings = garment.pieces.filter(({ name }) => name.endsWith('facing'));
      expect(facings.map(({ name }) => name)).toContain('back neck facing');
      for (const { name, edges } of facings) {
        const free = edges.filter(({ turn, name: edge }) => turn === 'finished' && edge !== 'centre back');
        expect(
          free.map((edge) => edge.name),
          name,
        ).toContain(name.includes('neck') ? 'lower' : 'inner');
        for (const { allowance } of free) expect(allowance, name).toBe(10);
      }
    },
  );

  it('give the casing of a sleeve what it takes, whatever is chosen', () => {
    const casing = edgeOf(dress, 'sleeve', 'hem').allowance;
    const narrow = drafted('dress', lady, { sleeveHemAllowance: 10 });
    expect(edgeOf(narrow, 'sleeve', 'hem').allowance).toBe(casing);
  });

  it.each([{}, { opening: 'side' }, { sleeve: 'none', inside: 'faced' }])(
    'are equal wherever two edges are sewn to each other by machine: %o',
    (styling) => {
      const { garment } = drafted('dress', lady, styling);
      const widths = (refs: readonly EdgeRef[]) =>
        refs.map(
          ({ piece, edge }) =>
            garment.pieces.find(({ name }) => name === piece)?.edges.find(({ name }) => name === edge)
              ?.allowance,
        );
      for (const seam of garment.seams.filter(({ felled }) => !felled)) {
        const both = new Set([...widths(seam.a), ...widths(seam.b)]);
        expect([seam.name, [...both]]).toEqual([seam.name, [expect.any(Number)]]);
      }
    },
  );
});

describe.each(shippedBodies)('for %s', (name) => {
  it.each([20, 40, 50])('a hem of %i mm is drawn, cut and turned up true', (hemAllowance) => {
    expect(errors(drafted('dress', shippedBody(name), { hemAllowance }))).toEqual([]);
  });

  it('the widest and the narrowest allowances together are cut true', () => {
    const ends = {
      seamAllowance: 6,
      sideAllowance: 40,
      centreBackAllowance: 40,
      zipAllowance: 40,
      armholeAllowance: 16,
      necklineAllowance: 5,
      hemAllowance: 50,
    };
    expect(errors(drafted('dress', shippedBody(name), ends))).toEqual([]);
    const others = {
      ...ends,
      seamAllowance: 25,
      sideAllowance: 6,
      centreBackAllowance: 6,
      zipAllowance: 12,
      armholeAllowance: 6,
    };
    expect(errors(drafted('dress', shippedBody(name), others))).toEqual([]);
  });
});
