import { describe, expect, it } from 'vitest';
import { unaccounted } from '../../../engine/checks/accounted.ts';
import { tapeFor } from '../../../engine/checks/tape.ts';
import type { Garment } from '../../../engine/pattern/garment.ts';
import type { Piece } from '../../../engine/pattern/piece.ts';
import { drafted, shippedBody } from '../../drafts/drafted.ts';

const { garment: dress } = drafted('dress', shippedBody('leading-lady'));

const found = (garment: Garment): readonly string[] =>
  unaccounted(garment, tapeFor(garment)).map(({ code, path }) => `${code} ${path}`);

const withPiece = (name: string, change: (piece: Piece) => Piece): Garment => ({
  ...dress,
  pieces: dress.pieces.map((piece) => (piece.name === name ? change(piece) : piece)),
});

describe('everything of a garment', () => {
  it('is accounted for in a dress', () => {
    expect(found(dress)).toEqual([]);
  });

  it('is not where one seam is left out: both its edges are named', () => {
    const seams = dress.seams.filter(({ name }) => name !== 'side');
    expect(found({ ...dress, seams })).toEqual(['edge-unsewn side front/side', 'edge-unsewn side back/side']);
  });

  it('is not where no seams are left, for every edge with an allowance', () => {
    expect(found({ ...dress, seams: [] }).length).toBeGreaterThan(50);
  });

  it('is, where an edge is left open by name', () => {
    const { garment } = drafted('skirt', shippedBody('leading-lady'));
    expect(found(garment)).toEqual([]);
    expect(
      garment.pieces.flatMap(({ edges }) => edges.filter(({ open }) => open)).map(({ name }) => name),
    ).toContain('waist');
  });

  it('is not where a girth counts nothing, or leaves a piece out', () => {
    expect(found({ ...dress, girths: [] })).toContain('level-uncounted side front/bust level');
    const girths = dress.girths.map((girth) =>
      girth.level === 'bust' ? { ...girth, parts: girth.parts.slice(1) } : girth,
    );
    expect(found({ ...dress, girths })).toEqual(['level-uncounted centre back/bust level']);
    const empty = dress.girths.map((girth) => (girth.level === 'waist' ? { ...girth, parts: [] } : girth));
    expect(found({ ...dress, girths: empty })).toEqual(['girth-miscounted waist']);
  });

  it.each([
    [
      'cut once more',
      (piece: Piece) => ({ ...piece, cut: piece.cut.map((one) => ({ ...one, count: 3 })) }),
      ['girth-miscounted', 'cut-cannot-be'],
    ],
    [
      'on a fold it has not',
      (piece: Piece) => ({ ...piece, cut: piece.cut.map((one) => ({ ...one, onFold: true })) }),
      ['cut-cannot-be'],
    ],
    ['with another number', (piece: Piece) => ({ ...piece, number: 9 }), ['piece-misnumbered']],
  ] as const)('is not where a piece is %s', (_, change, codes) => {
    const all = found(withPiece('side front', change));
    for (const code of codes)
      expect(
        all.some((each) => each.startsWith(code)),
        `${code} in ${all}`,
      ).toBe(true);
  });

  it('is not where all counts are doubled, of every piece or of one girth', () => {
    const doubled = {
      ...dress,
      pieces: dress.pieces.map((piece) => ({
        ...piece,
        cut: piece.cut.map((one) => ({ ...one, count: 2 * one.count })),
      })),
    };
    expect(found(doubled)).toEqual(dress.girths.map(({ level }) => `girth-miscounted ${level}`));
    const girths = dress.girths.map((girth) => ({
      ...girth,
      parts: girth.parts.map((part) => ({ ...part, times: 2 * part.times })),
    }));
    expect(found({ ...dress, girths })).toEqual(dress.girths.map(({ level }) => `girth-miscounted ${level}`));
  });

  it('is not where a girth of one arm counts its piece twice, or is that of a piece cut four times', () => {
    const limbs = dress.girths.filter(({ limb }) => limb);
    expect(limbs.length).toBeGreaterThan(0);
    const girths = dress.girths.map((girth) =>
      girth.limb ? { ...girth, parts: girth.parts.map((part) => ({ ...part, times: 2 })) } : girth,
    );
    expect(found({ ...dress, girths })).toEqual(limbs.map(({ level }) => `girth-miscounted ${level}`));
    const pieces = dress.pieces.map((piece) =>
      limbs.some(({ parts }) => parts.some((part) => part.piece === piece.name))
        ? { ...piece, cut: piece.cut.map((one) => ({ ...one, count: 4 })) }
        : piece,
    );
    for (const { level } of limbs) expect(found({ ...dress, pieces })).toContain(`girth-miscounted ${level}`);
  });

  it('is not where body and ease of a girth are shifted against each other', () => {
    const girths = dress.girths.map((girth) => ({ ...girth, body: girth.body - 20, ease: girth.ease + 20 }));
    expect(found({ ...dress, girths })).toEqual([
      'girth-of-another bust',
      'girth-of-another under-bust',
      'girth-of-another waist',
      'girth-of-another under-bust, lining',
      'girth-of-another waist, lining',
      'girth-of-another hip',
    ]);
  });

  it('is not where an edge may turn nine times', () => {
    const loose = withPiece('side front', (piece) => ({
      ...piece,
      edges: piece.edges.map((edge) => (edge.name === 'side' ? { ...edge, inflections: 9 } : edge)),
    }));
    expect(found(loose)).toEqual(['turns-overclaimed side front/side']);
  });

  it('is not where a piece with an edge on the fold is cut flat', () => {
    const flat = withPiece('centre front', (piece) => ({
      ...piece,
      cut: piece.cut.map((one) => ({ ...one, onFold: false })),
    }));
    expect(found(flat)).toContain('cut-cannot-be centre front');
  });
});
