import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutReady } from '../../../engine/checks/cut-ready.ts';
import { cuttingLines } from '../../../engine/finishing/cut-lines.ts';
import type { Curve } from '../../../engine/geometry/curve.ts';
import { type Point, point } from '../../../engine/geometry/point.ts';
import { reversed } from '../../../engine/geometry/split.ts';
import { PARALLEL } from '../../../engine/geometry/tolerance.ts';
import { transformedCurve, turnedBy } from '../../../engine/geometry/transform.ts';
import type { Garment } from '../../../engine/pattern/garment.ts';
import { cubic, edge, garment, line, piece } from '../garments.ts';

const waist = { allowance: 12.7, rank: 6 };
const seam = { allowance: 12.7, rank: 2 };
const rest = { allowance: 12.7, rank: 10 };

/** Two panels sewn along the y axis from its foot at 0, 200 up to 0, 0, where a waist in two parts runs over them. */
function panels(left: Curve, right: Curve): Garment {
  const [top, foot] = [point(0, 0), point(0, 200)];
  const outer = (x: number) => point(x, 200);
  return garment(
    [
      piece('centre back', [
        edge('waist', [left], waist),
        edge('princess', [line(top, foot)], seam),
        edge('hem', [line(foot, outer(left.from.x))], rest),
        edge('centre', [line(outer(left.from.x), left.from)], seam),
      ]),
      piece('side back', [
        edge('waist', [right], waist),
        edge('side', [line(right.to, outer(right.to.x))], seam),
        edge('hem', [line(outer(right.to.x), foot)], rest),
        edge('princess', [line(foot, top)], seam),
      ]),
    ],
    {
      seams: [
        {
          name: 'back princess',
          a: [{ piece: 'centre back', edge: 'princess' }],
          b: [{ piece: 'side back', edge: 'princess', reversed: true }],
          ease: 0,
          gatherRatio: 1,
        },
      ],
    },
  );
}

/** A waist that drops to the seam and levels out only within its last few mm. */
const hooked = (length: number, drop: number, handle: number): Curve =>
  cubic(point(-length, -drop), point(-0.45 * length, -drop), point(-handle, 0), point(0, 0));

const straight: Curve = line(point(0, 0), point(70, 0));

const faults = (made: Garment) => cutReady(made, cuttingLines(made, PARALLEL), 0.05);

describe('the cutting lines of two panels that are sewn together', () => {
  it('end flush at the back of a skirt whose waist twelve changes at a fitting left hooked in its last 6 mm', () => {
    const left = cubic(point(-47.745, -35.792), point(-21.936, -15.75), point(-6.374, 0), point(0, 0));
    expect(faults(panels(left, straight))).toEqual([]);
  });

  it('end flush however narrow the hollow at the end of a waist is, and whichever way it slants', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 45, max: 100, noNaN: true }),
        fc.double({ min: -25, max: 25, noNaN: true }),
        fc.double({ min: 0.5, max: 12, noNaN: true }),
        fc.double({ min: -0.4, max: 0.4, noNaN: true }),
        fc.boolean(),
        (length, drop, handle, angle, mirrored) => {
          const turn = turnedBy(point(0, 0), angle);
          const mirror = ({ x, y }: Point): Point => point(-x, y);
          const left = transformedCurve(hooked(length, drop, handle), turn);
          const right = transformedCurve(straight, turn);
          const made = mirrored
            ? panels(reversed(transformedCurve(right, mirror)), reversed(transformedCurve(left, mirror)))
            : panels(left, right);
          expect(faults(made)).toEqual([]);
        },
      ),
      { numRuns: 300 },
    );
  });
});
