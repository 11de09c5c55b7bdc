import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arc } from '../../../../engine/geometry/arc.ts';
import { edgeEnd, edgeStart } from '../../../../engine/geometry/edge.ts';
import { type Point, point } from '../../../../engine/geometry/point.ts';
import { mirrorImage } from '../../../../engine/pattern/mirror-image.ts';
import type { Piece } from '../../../../engine/pattern/piece.ts';
import type { ShapeMeasure } from '../../../../engine/pattern/shape.ts';
import { uniform } from '../../../uniform.ts';
import { edge, line, piece } from '../../garments.ts';
import { against, along, figure, laidElsewhere } from './measuring.ts';

/** A centre panel 60 mm wide, its princess seam straight. */
const centreFront = piece('centre front', [
  edge('neckline', [line(point(0, 0), point(60, 0))]),
  edge('princess', [line(point(60, 0), point(60, 150))]),
  edge('waist', [line(point(60, 150), point(0, 150))]),
  edge('fold', [line(point(0, 150), point(0, 0))], { turn: 'fold', allowance: 0 }),
]);

const RADIUS = 150;
const middle = point(RADIUS, 100);

/** So far from the middle of the arc, an angle up from its level, to the left. */
const around = (far: number, angle: number): Point =>
  point(middle.x - far * Math.cos(angle), middle.y - far * Math.sin(angle));

/**
 * A side panel whose princess seam is an arc of 150 mm, half a radian up and half a radian down, and whose armhole falls
 * from the top of it through a place half its height up.
 */
function sideFront(place: Point): Piece {
  const seam = edge(
    'princess',
    arc(middle, { x: -RADIUS * Math.cos(0.5), y: RADIUS * Math.sin(0.5) }, 1, 1e-7).curves,
  );
  const [foot, top] = [edgeStart(seam), edgeEnd(seam)];
  const turn = point(2 * place.x - top.x, 2 * place.y - top.y);
  const underarm = point(turn.x + (turn.y - top.y) / 2, turn.y - (turn.x - top.x) / 2);
  const hip = point(underarm.x, 300);
  return piece('side front', [
    seam,
    edge('armhole', [line(top, turn), line(turn, underarm)]),
    edge('side', [line(underarm, hip)]),
    edge('waist', [line(hip, foot)]),
  ]);
}

const across: ShapeMeasure = {
  kind: 'across',
  armhole: { edges: [against('side front', 'armhole')] },
  share: 0.5,
  side: { edges: [along('side front', 'princess')] },
  centre: { edges: [against('centre front', 'princess')] },
  middle: along('centre front', 'fold'),
};

// Rolled along a straight line, a place at a distance from the middle of an arc comes square to it there.
describe('the width across to a place on the side panel', () => {
  it('is that of the centre panel and from the seam on, where the line across meets it (closed form)', () => {
    fc.assert(
      fc.property(uniform(80, 140), uniform(-0.45, 0.45), (far, angle) => {
        expect(figure(across, centreFront, sideFront(around(far, angle)))).toBeCloseTo(60 + RADIUS - far, 4);
      }),
    );
  });

  it('is found with both panels laid elsewhere, and with one drawn in mirror image', () => {
    const panel = sideFront(around(120, 0.2));
    const found = [
      figure(across, laidElsewhere(centreFront, 1), laidElsewhere(panel, -2)),
      figure(
        {
          ...across,
          armhole: { edges: [along('side front', 'armhole')] },
          side: { edges: [against('side front', 'princess')] },
        },
        centreFront,
        mirrorImage(panel),
      ),
      figure({ ...across, plus: 7 }, centreFront, panel),
    ];
    expect(found).toEqual([expect.closeTo(90, 4), expect.closeTo(90, 4), expect.closeTo(97, 4)]);
  });

  it.each([0.7, -0.7])(
    'is taken at the end of the seam where the line across passes beyond it (%d)',
    (angle) => {
      const beyond = RADIUS - 120 * Math.cos(0.2);
      expect(figure(across, centreFront, sideFront(around(120, angle)))).toBeCloseTo(60 + beyond, 4);
    },
  );
});
