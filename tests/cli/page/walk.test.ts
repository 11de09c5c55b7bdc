import { readFile } from 'node:fs/promises';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import type { ScreenSeam } from '../../../cli/page/draft-parts.ts';
import { drafted } from '../../../cli/page/requests/draft.ts';
import { isTurnedOver, laidAlong, seamsAt, walkedTo } from '../../../cli/page/views/pieces/walk.ts';

const lady = new URL('../../../measurements/leading-lady.yaml', import.meta.url);

const { made } = await drafted({
  ...{ kind: 'draft', number: 1, garment: 'dress', choices: {}, parts: ['lines', 'seams'] },
  body: parse(await readFile(lady, 'utf8')),
});
const seams = made?.parts.seams ?? [];
const pieces = made?.parts.lines ?? [];

/** The ends of an edge as its path has them. */
const ends = (piece: string, edge: string) => {
  const d = pieces.find(({ name }) => name === piece)?.lines.find((line) => line.edge === edge)?.d ?? '';
  const numbers = d.match(/-?\d+(?:\.\d+)?/g)?.map(Number) ?? [];
  return { from: numbers.slice(0, 2), to: numbers.slice(-2) };
};

describe('a seam on the screen', () => {
  test('has edges that are drawn, and stops that end where both sides do', () => {
    expect(seams.length).toBeGreaterThan(20);
    for (const seam of seams) {
      for (const { piece, edge } of [...seam.a.edges, ...seam.b.edges])
        expect(ends(piece, edge).from, `${piece} ${edge}`).toHaveLength(2);
      const sum = (side: ScreenSeam['a']): number => side.edges.reduce((all, { length }) => all + length, 0);
      expect(seam.stops.at(-1)?.a).toBeCloseTo(sum(seam.a), 6);
      expect(seam.stops.at(-1)?.b).toBeCloseTo(sum(seam.b), 6);
    }
  });

  test('is walked notch to notch, and its gathers are drawn up between them', () => {
    // A side that runs over one edge twice, as over a fold, has two places for one.
    const once = ({ b }: ScreenSeam): boolean =>
      new Set(b.edges.map(({ piece, edge }) => `${piece} ${edge}`)).size === b.edges.length;
    const gathered = seams.filter((seam) => seam.gatherRatio > 1.1 && once(seam));
    expect(gathered.length).toBeGreaterThan(0);
    for (const seam of gathered)
      for (const [i, { piece, edge }] of seam.a.edges.entries()) {
        const sewn = seamsAt(seams, piece, edge).find((each) => each.seam === seam);
        expect(sewn?.index).toBe(i);
        if (!sewn) continue;
        for (const stop of seam.stops) {
          const share = (stop.a - sewn.begins) / sewn.length;
          if (share < 0 || share > 1) continue;
          const at = walkedTo(sewn, share);
          const before = seam.b.edges.slice(
            0,
            seam.b.edges.findIndex((ref) => ref.edge === at?.partner.edge && ref.piece === at.partner.piece),
          );
          const ref = seam.b.edges[before.length];
          const along = at?.partner.reversed ? (ref?.length ?? 0) - at.partner.at : (at?.partner.at ?? 0);
          expect(before.reduce((sum, { length }) => sum + length, 0) + along).toBeCloseTo(stop.b, 6);
        }
      }
  });

  test('lays the partner edge to edge: both begin and end at one place where neither is eased', () => {
    const straight = seams.filter(
      (seam) => seam.says === 'sewn edge to edge' && seam.a.edges.length === 1 && seam.b.edges.length === 1,
    );
    expect(straight.length).toBeGreaterThan(3);
    for (const seam of straight) {
      const { piece = '', edge = '' } = seam.a.edges[0] ?? {};
      const sewn = seamsAt(seams, piece, edge).find((each) => each.seam === seam);
      const at = sewn && walkedTo(sewn, 0);
      if (!at) throw new Error(seam.name);
      const own = ends(piece, edge);
      const other = ends(at.partner.piece, at.partner.edge);
      const begin = (line: typeof own, reversed: boolean) => (reversed ? line.to : line.from);
      const [x = 0, y = 0] = begin(own, at.own.reversed);
      const [u = 0, v = 0] = begin(other, at.partner.reversed);
      const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = laidAlong(
        { x, y, angle: 0.3 },
        { x: u, y: v, angle: -1.1 },
        isTurnedOver(at.own, at.partner),
      );
      expect([a * u + c * v + e, b * u + d * v + f]).toEqual([expect.closeTo(x, 6), expect.closeTo(y, 6)]);
      expect(a * d - b * c).toBeCloseTo(isTurnedOver(at.own, at.partner) ? -1 : 1, 9);
      // What headed one way heads the other's.
      expect(
        Math.atan2(b * Math.cos(-1.1) + d * Math.sin(-1.1), a * Math.cos(-1.1) + c * Math.sin(-1.1)),
      ).toBeCloseTo(0.3, 9);
    }
  });
});
