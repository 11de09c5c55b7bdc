import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chainLength, laidOut } from '../../../../engine/checks/shape/chain.ts';
import { tapeFor } from '../../../../engine/checks/tape.ts';
import { edgeEnd, edgeLength, endDirection } from '../../../../engine/geometry/edge.ts';
import { point } from '../../../../engine/geometry/point.ts';
import { mirrorImage } from '../../../../engine/pattern/mirror-image.ts';
import type { Piece } from '../../../../engine/pattern/piece.ts';
import type { EdgeChain } from '../../../../engine/pattern/shape.ts';
import { uniform } from '../../../uniform.ts';
import { edge, garment, line, notch, piece } from '../../garments.ts';
import { against, along, arcEnd, arcFrom, laidElsewhere, under } from './measuring.ts';

const origin = point(0, 0);

/** Two panels whose edges, sewn, make one arc of 80 mm radius over 1.5 radians; a notch 10 mm from the end of it. */
const first = under('first', arcFrom(origin, 80, 0.9));
const second = under('second', arcFrom(origin, 80, 0.6), [notch('shoulder', 'line', 38)]);
const whole: EdgeChain = { edges: [along('first', 'line'), along('second', 'line')] };

const laid = (chain: EdgeChain, ...pieces: readonly Piece[]) => laidOut(chain, tapeFor(garment(pieces)));
const anyAngle = uniform(-Math.PI, Math.PI);

describe('a chain laid out', () => {
  it('runs on through the seams as one line, wherever its pieces lie on their sheets', () => {
    fc.assert(
      fc.property(anyAngle, anyAngle, (a, b) => {
        const out = laid(whole, laidElsewhere(first, a), laidElsewhere(second, b));
        if (!out) throw new Error('nothing laid out');
        const end = arcEnd(origin, 80, 1.5);
        expect(edgeEnd(out).x).toBeCloseTo(end.x, 5);
        expect(edgeEnd(out).y).toBeCloseTo(end.y, 5);
        expect(Math.atan2(endDirection(out).y, endDirection(out).x)).toBeCloseTo(1.5, 6);
      }),
    );
  });

  it('is the same whichever side a piece is drawn from: what is mirrored is walked against its outline', () => {
    const mirrored: EdgeChain = { edges: [along('first', 'line'), against('second', 'line')] };
    const out = laid(mirrored, first, mirrorImage(second));
    const same = laid(whole, first, second);
    if (!out || !same) throw new Error('nothing laid out');
    expect(edgeEnd(out).x).toBeCloseTo(edgeEnd(same).x, 6);
    expect(edgeEnd(out).y).toBeCloseTo(edgeEnd(same).y, 6);
  });

  it('keeps the corner between two edges of one piece', () => {
    const cornered = piece('yoke', [
      edge('neck', [line(point(0, 0), point(30, 0))]),
      edge('shoulder', [line(point(30, 0), point(70, 30))]),
      edge('rest', [line(point(70, 30), point(0, 80)), line(point(0, 80), point(0, 0))]),
    ]);
    const out = laid({ edges: [along('yoke', 'neck'), along('yoke', 'shoulder')] }, cornered);
    expect(out && edgeEnd(out)).toEqual({ x: expect.closeTo(70, 9), y: expect.closeTo(30, 9) });
    const back = laid({ edges: [against('yoke', 'shoulder'), against('yoke', 'neck')] }, cornered);
    expect(back && Math.hypot(edgeEnd(back).x, edgeEnd(back).y)).toBeCloseTo(Math.hypot(70, 30), 9);
  });

  it('is nothing between a notch and itself, wherever that stands', () => {
    expect(laid({ ...whole, from: 'shoulder', to: 'shoulder' }, first, second)).toBeUndefined();
  });

  it('counts from notch to notch where notches are named', () => {
    const toShoulder: EdgeChain = { ...whole, to: 'shoulder' };
    const out = laid(toShoulder, first, second);
    expect(out && edgeLength(out)).toBeCloseTo(80 * 0.9 + 38, 5);
    expect(chainLength(toShoulder, tapeFor(garment([first, second])))).toBeCloseTo(80 * 0.9 + 38, 5);
    const after = laid({ ...whole, from: 'shoulder' }, first, second);
    expect(after && edgeLength(after)).toBeCloseTo(80 * 0.6 - 38, 5);
  });

  it('is nothing where an edge or a notch is not there', () => {
    expect(laid({ edges: [along('first', 'hem')] }, first)).toBeUndefined();
    expect(laid({ edges: [along('sleeve', 'line')] }, first)).toBeUndefined();
    expect(laid({ ...whole, to: 'underarm' }, first, second)).toBeUndefined();
    expect(laid({ edges: [] }, first)).toBeUndefined();
  });
});
