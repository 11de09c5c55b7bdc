import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bodice } from '../../../drafts/whole-bodice.ts';
import { type Evaluation, evaluate } from '../../../engine/evaluate.ts';
import { edgeEnd, edgeLength, edgeStart } from '../../../engine/geometry/edge.ts';
import { evenPlaces } from '../../../engine/geometry/even-places.ts';
import { distance, type Point, point, turnedAbout, vectorBetween } from '../../../engine/geometry/point.ts';
import { angleOf, unit } from '../../../engine/geometry/vector.ts';
import type { PieceEdge } from '../../../engine/pattern/piece.ts';
import { pieceSvgs } from '../../../engine/render/svg.ts';
import { plausibleBodies } from '../../plausible-bodies.ts';
import { uniform } from '../../uniform.ts';
import { drafted, edgeOf, pieceOf, shippedBodies, shippedBody } from '../drafted.ts';

const dresses = shippedBodies.map((name) => [name, drafted('dress', shippedBody(name))] as const);

describe('the straps', () => {
  it.each(dresses)('are as wide as chosen where their two parts meet at the shoulder: %s', (_, dress) => {
    for (const part of ['front', 'back'])
      expect(edgeLength(edgeOf(dress, `${part} strap`, 'shoulder'))).toBeCloseTo(45, 6);
  });

  it.each(dresses)('end as wide as the panel that each is cut off from: %s', (_, dress) => {
    for (const part of ['front', 'back'])
      expect(edgeLength(edgeOf(dress, `${part} strap`, `${part} end`))).toBeCloseTo(
        edgeLength(edgeOf(dress, `side ${part}`, 'strap')),
        6,
      );
  });

  it.each(dresses)('have room on both parts for the whole label, beside the grainline: %s', (_, dress) => {
    for (const [file, svg] of pieceSvgs(dress.garment, dress.cutLines, { date: '4 May' }))
      if (file.includes('strap')) {
        expect(svg, file).toMatch(/>cut \d/);
        expect(svg, file).toMatch(/allowance/);
        expect(svg, file).toContain(`for ${dress.garment.body}, 4 May`);
      }
  });

  // A front so short and a neckline so deep that the strap curves past the straight way between its ends.
  it('have their grainline inside, however they are curved', () => {
    const dress = drafted('dress', {
      name: 'curved strap',
      units: 'mm',
      bustGirth: 834,
      waistGirth: 653,
      hipGirth: 901,
      backNeckPointToWaist: 339,
      neckShoulderPointToBustPoint: 267,
      neckShoulderPointToWaist: 359,
      acrossFrontWidth: 291,
      cup: 'AA',
    });
    expect(dress.report.issues.filter(({ severity }) => severity === 'error')).toEqual([]);
    const { grain } = pieceOf(dress, 'front strap');
    const shoulder = edgeStart(edgeOf(dress, 'front strap', 'shoulder'));
    expect(distance(grain.from, grain.to)).toBeGreaterThan(distance(shoulder, grain.to) / 2);
  });

  // So there is no case for a straight band: it would have to lie on such a path within 2 mm, edge by edge.
  it('lie on no straight path, whatever is chosen: an edge wanders by 10 mm and more from straight', () => {
    const bodies = [...shippedBodies.map(shippedBody), ...plausibleBodies(20)];
    const styling = fc.record({
      strapPosition: uniform(10, 60),
      strapWidth: uniform(20, 60),
      necklineDepth: uniform(0.45, 0.75),
      necklineWidth: uniform(0.9, 1.35),
      backNecklineDepth: uniform(25, 140),
      backNeckline: fc.constantFrom('round', 'pointed'),
      front: fc.constantFrom('gathered', 'plain'),
    });
    fc.assert(
      fc.property(fc.constantFrom(...bodies), styling, (body, chosen) => {
        const made = evaluate(bodice, body, chosen);
        if (made.ok) expect(mostAstray(made.value)).toBeGreaterThan(10);
      }),
      { numRuns: 100 },
    );
  });
});

/** How far either edge of a strap strays from a straight line, its parts laid together at the shoulder, mm. */
function mostAstray(made: Evaluation): number {
  const [front, back] = ['front', 'back'].map((part) => {
    const shoulder = edgeOf(made, `${part} strap`, 'shoulder');
    const turned = angleOf(vectorBetween(edgeStart(shoulder), edgeEnd(shoulder)));
    const laid = (p: Point): Point => {
      const level = turnedAbout(p, edgeStart(shoulder), -turned);
      const { x, y } = vectorBetween(edgeStart(shoulder), level);
      return part === 'front' ? point(x, y) : point(x, -y);
    };
    return (edges: readonly PieceEdge[]): Point[] =>
      edges.flatMap((edge) => evenPlaces(edge, 21, 0.01).map((place) => laid(place.point)));
  });
  const [inner, outer] = [/^inner$/, /^outer|^armhole/].map((name) => {
    const of = (part: string) => pieceOf(made, `${part} strap`).edges.filter((edge) => name.test(edge.name));
    return [...(front?.(of('front')) ?? []), ...(back?.(of('back')) ?? [])];
  });
  return Math.max(astray(inner ?? []), astray(outer ?? []));
}

/** How far places lie on either side of the line from the lowest of them to the highest. */
function astray(places: readonly Point[]): number {
  const inOrder = places.toSorted((a, b) => a.y - b.y);
  const [first, last] = [inOrder[0], inOrder.at(-1)];
  if (!first || !last) return Number.NaN;
  const along = unit(vectorBetween(first, last));
  const off = places.map((p) => along.x * (p.y - first.y) - along.y * (p.x - first.x));
  return Math.max(...off) - Math.min(...off);
}
