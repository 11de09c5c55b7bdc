import { describe, expect, it } from 'vitest';
import { liningRules as rules } from '../../../drafts/lining/rules.ts';
import type { Evaluation } from '../../../engine/evaluate.ts';
import {
  edgeEnd,
  edgeLength,
  edgeStart,
  endDirection,
  startDirection,
} from '../../../engine/geometry/edge.ts';
import { distance } from '../../../engine/geometry/point.ts';
import { dot } from '../../../engine/geometry/vector.ts';
import { drafted, edgeOf, pieceOf, shippedBodies, shippedBody } from '../drafted.ts';
import { apart } from './apart.ts';

const turn = 2;
const lady = shippedBody('leading-lady');
const faced = (styling: object, body: unknown = lady): Evaluation =>
  drafted('dress', body, { inside: 'faced', turnOfCloth: turn, ...styling });
const sleeveless = { sleeve: 'none' };
const whole = { shoulder: 'whole', front: 'plain' };

const facings = ({ garment }: Evaluation): readonly string[] =>
  garment.pieces.flatMap(({ name }) => (name.endsWith('facing') ? [name] : []));

describe('a bodice that is faced', () => {
  it.each([
    [{}, ['back neck facing']],
    [sleeveless, ['back neck facing', 'front armhole facing', 'back armhole facing']],
    [{ front: 'plain' }, ['front neck facing', 'back neck facing']],
    [{ shoulder: 'whole' }, ['front neck facing', 'back neck facing']],
    [
      { ...whole, ...sleeveless, princess: 'armhole' },
      ['front neck facing', 'back neck facing', 'front armhole facing', 'back armhole facing'],
    ],
  ])('has facings for its necklines, and without sleeves for its armholes: %o', (styling, names) => {
    expect(facings(faced(styling))).toEqual(names);
  });

  it('has facings set back like a lining, that end below the neckline and the underarm', () => {
    const of = faced(sleeveless);
    for (const [facing, panel, edge] of [
      ['back neck facing', 'centre back', 'neckline'],
      ['front armhole facing', 'side front', 'armhole underarm'],
      ['back armhole facing', 'side back', 'armhole upper'],
    ] as const)
      for (const mm of apart(edgeOf(of, facing, edge), [edgeOf(of, panel, edge)])) {
        expect(mm).toBeGreaterThan(0.6 * turn);
        expect(mm).toBeLessThan(1.5 * turn);
      }
    expect(edgeLength(edgeOf(of, 'back neck facing', 'centre back'))).toBeCloseTo(rules.neckFacing.value, 6);
    expect(edgeLength(edgeOf(of, 'front armhole facing', 'side'))).toBeCloseTo(rules.armholeFacing.value, 6);
  });

  it('cuts the front neck facing of a plain front on the fold, and beside an insert as a pair', () => {
    const cut = (styling: object) => pieceOf(faced(styling), 'front neck facing').cut[0];
    expect(cut({ front: 'plain' })).toMatchObject({ cloth: 'self', count: 1, onFold: true });
    expect(cut({ shoulder: 'whole' })).toMatchObject({ cloth: 'self', count: 2, onFold: false });
  });

  it.each(['square', 'round', 'pointed', 'sweetheart'])(
    'crosses the centre front at right angles with the inner edge: %s',
    (neckline) => {
      const of = faced({ ...whole, neckline });
      const along = endDirection(edgeOf(of, 'front neck facing', 'lower'));
      expect(dot(along, startDirection(edgeOf(of, 'front neck facing', 'centre front')))).toBeCloseTo(0, 9);
    },
  );

  it('is nowhere too narrow to lie flat, and no wider than a corner makes it: half to twice of what its rule says', () => {
    for (const name of shippedBodies)
      for (const neckline of ['square', 'round', 'pointed', 'sweetheart'])
        for (const princess of ['shoulder', 'neckline', 'armhole']) {
          const of = faced({ ...whole, ...sleeveless, neckline, princess }, shippedBody(name));
          for (const facing of facings(of)) {
            const { edges } = pieceOf(of, facing);
            const finished = edges.filter(({ name: edge }) => /^(neckline|armhole)/.test(edge));
            const depth = facing.includes('neck') ? rules.neckFacing.value : rules.armholeFacing.value;
            for (const mm of apart(
              edgeOf(of, facing, facing.includes('neck') ? 'lower' : 'inner'),
              finished,
            )) {
              expect({
                name,
                neckline,
                princess,
                facing,
                mm,
                ok: mm > 0.5 * depth && mm < 2 * depth,
              }).toMatchObject({ ok: true });
            }
          }
        }
  });

  it('does not let facings of neck and armhole lie on each other along the shoulder', () => {
    const of = faced({ ...whole, ...sleeveless, princess: 'neckline' });
    const shoulder = edgeLength(edgeOf(of, 'side front', 'shoulder'));
    const both = ['front neck facing', 'front armhole facing'].map((facing) =>
      edgeLength(edgeOf(of, facing, 'shoulder')),
    );
    expect(both[0]).toBeCloseTo(shoulder / 2 - turn, 6);
    expect((both[0] ?? 0) + (both[1] ?? 0) + 2 * turn).toBeCloseTo(shoulder, 6);
  });

  it('is one piece over the princess seam, laid flat: as long as the panels that it faces, less the turn of the cloth', () => {
    const of = faced({ ...whole, ...sleeveless, princess: 'armhole' });
    const seam = of.garment.seams.find(({ name }) => name === 'facing, front armhole');
    expect(seam?.b.map(({ piece }) => piece)).toEqual(['centre front', 'side front']);
    expect(seam?.a).toEqual([{ piece: 'front armhole facing', edge: 'armhole upper' }]);
    expect(Math.abs(seam?.ease ?? 9)).toBeLessThan(2 * turn);
    const { edges } = pieceOf(of, 'front armhole facing');
    for (const [i, edge] of edges.entries())
      expect(distance(edgeEnd(edge), edgeStart(edges[(i + 1) % edges.length] ?? edge))).toBeLessThan(1e-9);
  });
});
