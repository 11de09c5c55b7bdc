import { describe, expect, it } from 'vitest';
import { draftBounds } from '../../engine/checks/bounds.ts';
import { checkGarment } from '../../engine/checks/check-garment.ts';
import { cutReady } from '../../engine/checks/cut-ready.ts';
import { cuttingLines } from '../../engine/finishing/cut-lines.ts';
import { point } from '../../engine/geometry/point.ts';
import { PARALLEL } from '../../engine/geometry/tolerance.ts';
import { mirroredIn, scaledFrom, turnedBy } from '../../engine/geometry/transform.ts';
import type { Garment } from '../../engine/pattern/garment.ts';
import type { EdgeRef } from '../../engine/pattern/seam.ts';
import { renamed } from '../../engine/pattern/shape-parts.ts';
import { drafted, shippedBody } from './drafted.ts';
import { isLength, redrawn } from './moved-garment.ts';

const { garment, report } = drafted('dress', shippedBody('wardrobe-mistress'));

const faults = (changed: Garment): readonly string[] => [
  ...checkGarment(changed).issues.map((issue) => issue.message),
  ...cutReady(changed, cuttingLines(changed, PARALLEL), draftBounds.cutLine).map((issue) => issue.message),
];

/** Mirrored outlines run the other way along each edge, so seams and shapes walk each of their edges the other way. */
const turnedEdges = (changed: Garment): Garment => ({
  ...changed,
  seams: changed.seams.map((seam) => ({ ...seam, a: seam.a.map(turnedRef), b: seam.b.map(turnedRef) })),
  joins: changed.joins.map((join) =>
    join.kind === 'along' ? { ...join, from: join.to, to: join.from } : join,
  ),
  shapes: changed.shapes.map((shape) => renamed(shape, { edge: turnedRef, piece: (name) => name })),
});

const turnedRef = ({ piece, edge, reversed }: EdgeRef): EdgeRef => ({
  piece,
  edge,
  ...(reversed ? {} : { reversed: true as const }),
});

describe('a drafted dress', () => {
  it('stays true, with all lengths and shapes as they were, when every piece is mirrored', () => {
    const mirrored = redrawn(garment, mirroredIn(point(0, 0), point(0, 1)), 1, true);
    const walked = checkGarment(turnedEdges(mirrored));
    for (const [i, seam] of walked.seams.entries())
      expect(seam.lengthA).toBeCloseTo(report.seams[i]?.lengthA ?? 0, 5);
    for (const [i, shape] of walked.shapes.entries())
      expect(shape.value, shape.name).toBeCloseTo(report.shapes[i]?.value ?? Number.NaN, 3);
    expect(faults(turnedEdges(mirrored))).toEqual([]);
  });

  it('stays true, with all lengths doubled and all other shapes as they were, when every piece, allowance and girth is doubled', () => {
    const doubled = redrawn(garment, scaledFrom(point(0, 0), 2), 2, false);
    const walked = checkGarment(doubled);
    for (const [i, seam] of walked.seams.entries())
      expect(seam.lengthA).toBeCloseTo(2 * (report.seams[i]?.lengthA ?? 0), 4);
    for (const [i, shape] of walked.shapes.entries()) {
      const claim = garment.shapes[i];
      if (claim?.kind === 'notch depth') continue;
      const times = claim && isLength(claim) ? 2 : 1;
      expect(shape.value, shape.name).toBeCloseTo(times * (report.shapes[i]?.value ?? Number.NaN), 3);
    }
    expect(faults(doubled)).toEqual([]);
  });

  it('stays true, with all shapes as they were, when every piece is turned on the table', () => {
    const turned = redrawn(garment, turnedBy(point(10, 20), 0.7), 1, false);
    for (const [i, shape] of checkGarment(turned).shapes.entries())
      expect(shape.value, shape.name).toBeCloseTo(report.shapes[i]?.value ?? Number.NaN, 3);
    expect(faults(turned).filter((message) => !/girth|pieces measure/.test(message))).toEqual([]);
  });
});
