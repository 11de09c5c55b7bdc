import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FOLD, SHARPEST, turnCorner } from '../../../engine/finishing/turn-corner.ts';
import type { Curve } from '../../../engine/geometry/curve.ts';
import { distance, moved, type Point, point, vectorBetween } from '../../../engine/geometry/point.ts';
import { cross, dot, heading, outward, plus, scaled, type Vector } from '../../../engine/geometry/vector.ts';
import { uniform } from '../../uniform.ts';
import { line } from '../garments.ts';

const degrees = (angle: number): number => (angle * Math.PI) / 180;

interface Given {
  /** Angle inside the cloth, degrees. */
  readonly inside: number;
  readonly widths: readonly [number, number];
  readonly ranks: readonly [number, number];
  /** Heading of the edge before, degrees. */
  readonly turned?: number;
}

/** A corner at (0, 0) between two straight edges, 300 mm long each. */
function corner({ inside, widths, ranks, turned = 0 }: Given) {
  const into = heading(degrees(turned));
  const outOf = heading(degrees(turned + 180 - inside));
  const side = (width: number, rank: number, along: Vector, from: number, to: number) => {
    const foot = moved(point(0, 0), scaled(outward(along), width));
    const edge = line(moved(point(0, 0), scaled(along, from)), moved(point(0, 0), scaled(along, to)));
    return {
      width,
      rank,
      curves: [edge],
      parallel: [line(moved(foot, scaled(along, from)), moved(foot, scaled(along, to)))],
      deviation: 0,
    };
  };
  return {
    at: point(0, 0),
    into,
    outOf,
    before: side(widths[0], ranks[0], into, -300, 0),
    after: side(widths[1], ranks[1], outOf, 0, 300),
  };
}

/** How far a place lies along a heading and, to its left, out from it. */
const seenFrom = (along: Vector, p: Point) => {
  const v = vectorBetween(point(0, 0), p);
  return { along: dot(along, v), out: dot(outward(along), v) };
};

const straightOn = fc.record({
  inside: fc.double({ min: 25, max: 155, noNaN: true }),
  turned: uniform(0, 360),
  d: fc.double({ min: 1, max: 30, noNaN: true }),
});

describe('turning the corner of a cutting line', () => {
  it('ends the allowance of the seam sewn first square to it, where its line meets the other cut edge', () => {
    fc.assert(
      fc.property(straightOn, ({ inside, turned, d }) => {
        const given = corner({ inside, turned, widths: [d, d], ranks: [1, 2] });
        const { between, reach } = turnCorner(given);
        const wanted = d / Math.sin(degrees(inside));
        expect(reach).toBeCloseTo(wanted, 9);
        const [outer, onSeam] = between.map((p) => seenFrom(given.into, p));
        expect(outer?.along).toBeCloseTo(wanted, 9);
        expect(outer?.out).toBeCloseTo(d, 9);
        expect(onSeam?.along).toBeCloseTo(wanted, 9);
        expect(onSeam?.out).toBeCloseTo(0, 9);
      }),
    );
  });

  it('ends both neighbours of a seam at one distance when the line across it is true', () => {
    fc.assert(
      fc.property(
        straightOn,
        fc.double({ min: 1, max: 30, noNaN: true }),
        ({ inside, turned, d }, across) => {
          const left = turnCorner(corner({ inside, turned, widths: [d, across], ranks: [1, 2] }));
          const right = turnCorner(
            corner({ inside: 180 - inside, turned, widths: [across, d], ranks: [2, 1] }),
          );
          if (left.reach === undefined || right.reach === undefined) return;
          expect(left.reach).toBeCloseTo(right.reach, 9);
        },
      ),
    );
  });

  it('is the mirror image when the edge after is the one that runs through', () => {
    fc.assert(
      fc.property(straightOn, ({ inside, turned, d }) => {
        const given = corner({ inside, turned, widths: [12.7, 12.7 + d], ranks: [2, 1] });
        const through = scaled(given.outOf, -1);
        const { between, reach } = turnCorner(given);
        const width = 12.7 / Math.sin(degrees(inside));
        if (reach === undefined) return;
        expect(reach).toBeCloseTo(width, 9);
        const outer = between.at(-1) ?? point(0, 0);
        expect(seenFrom(through, outer).along).toBeCloseTo(width, 9);
        // Its outward side lies to the right of the heading back along it.
        expect(seenFrom(through, outer).out).toBeCloseTo(-12.7 - d, 9);
      }),
    );
  });

  it('trims the other parallel of a blunt corner to where the seam meets it, and leaves that of a sharp one', () => {
    const blunt = corner({ inside: 120, widths: [10, 10], ranks: [1, 2] });
    const { after, between } = turnCorner(blunt);
    expect(distance(after[0]?.from ?? point(0, 0), between.at(-1) ?? point(9, 9))).toBeLessThan(1e-9);
    const sharp = corner({ inside: 60, widths: [10, 10], ranks: [1, 2] });
    expect(turnCorner(sharp).after).toEqual(sharp.after.parallel);
  });

  it('widens the end at a blunt corner where the strip of the edge that crosses leans out farther', () => {
    const given = corner({ inside: 120, widths: [2, 10], ranks: [1, 2] });
    // The foot of the crossing edge's parallel lies 10 cos 60 = 5 mm outside the seam's prolongation.
    const outs = turnCorner(given).between.map((p) => seenFrom(given.into, p).out);
    expect(outs.map((out) => Math.round(out * 1e9) / 1e9 + 0)).toEqual([5, 5, 0, 0]);
    const onFold = corner({ inside: 120, widths: [0, 10], ranks: [FOLD, 2] });
    for (const p of turnCorner(onFold).between) expect(seenFrom(onFold.into, p).out).toBeCloseTo(0, 9);
  });

  it('lengthens an end when the neighbour asks for it, and never shortens one', () => {
    const given = corner({ inside: 90, widths: [10, 10], ranks: [1, 2] });
    expect(turnCorner(given, 10.3)).toMatchObject({ reach: 10.3 });
    expect(turnCorner(given, 10.3).between.map((p) => seenFrom(given.into, p).along)).toEqual([10.3, 10.3]);
    expect(turnCorner(given, 9)).toMatchObject({ reach: 10 });
  });

  it('lets a lengthened end run out into the other cut edge over eight times its length, without a step', () => {
    const given = corner({ inside: 90, widths: [10, 10], ranks: [1, 2] });
    const { between, after } = turnCorner(given, 12);
    const [, end] = between.map((p) => seenFrom(given.into, p));
    expect(end).toEqual({ along: 12, out: 0 });
    const meets = seenFrom(given.into, after[0]?.from ?? point(0, 0));
    expect(meets.along).toBeCloseTo(10, 9);
    expect(meets.out).toBeCloseTo(-8 * 2, 9);
  });

  it('steps an end that is longer by another allowance, as flush is flush', () => {
    const given = corner({ inside: 90, widths: [10, 10], ranks: [1, 2] });
    expect(turnCorner(given, 16).between.map((p) => seenFrom(given.into, p).along)).toEqual([16, 16, 10]);
  });

  it('never runs out nearer to the edge than its allowance: where that is round it is stepped', () => {
    const given = corner({ inside: 90, widths: [10, 10], ranks: [1, 2] });
    const { outOf } = given;
    // Bulging from the seam's end on with a radius of some 20 mm; the run-out would be a chord of 16 mm.
    const bulge = (radius: number): Curve => {
      const [from, along] = [moved(given.at, scaled(outward(outOf), 10)), scaled(outOf, radius * 0.55)];
      const to = moved(from, plus(scaled(outOf, radius), scaled(outward(outOf), -radius)));
      return {
        kind: 'cubic',
        from,
        handle1: moved(from, along),
        handle2: moved(to, scaled(outward(outOf), radius * 0.45)),
        to,
      };
    };
    const round = { ...given, after: { ...given.after, parallel: [bulge(20)] } };
    expect(turnCorner(round, 12).between).toHaveLength(3);
    const nearlyStraight = { ...given, after: { ...given.after, parallel: [bulge(2000)] } };
    expect(turnCorner(nearlyStraight, 12).between).toHaveLength(2);
  });

  it('ends an allowance on the prolonged fold', () => {
    const foldFirst = turnCorner(corner({ inside: 75, widths: [0, 10], ranks: [FOLD, 2] }));
    for (const p of foldFirst.between) expect(p.y).toBeCloseTo(0, 12);
    expect(foldFirst.reach).toBeCloseTo(10 / Math.sin(degrees(75)), 9);
    const square = turnCorner(corner({ inside: 90, widths: [0, 10], ranks: [FOLD, 2] }));
    expect(square.reach).toBeCloseTo(10, 12);
  });

  it('mitres equal ranks at the meeting of both parallels', () => {
    fc.assert(
      fc.property(straightOn, ({ inside, turned, d }) => {
        const given = corner({ inside: Math.max(inside, 50), turned, widths: [d, d], ranks: [1, 1] });
        const [tip, ...rest] = turnCorner(given).between;
        expect(rest).toEqual([]);
        expect(seenFrom(given.into, tip ?? point(0, 0)).out).toBeCloseTo(d, 9);
        expect(seenFrom(given.outOf, tip ?? point(0, 0)).out).toBeCloseTo(d, 9);
      }),
    );
  });

  it('mitres unequal allowances, and steps between them where they would not meet outside the corner', () => {
    const mitred = turnCorner(corner({ inside: 90, widths: [10, 20], ranks: [1, 1] }));
    expect(mitred.between).toEqual([expect.objectContaining({ x: 20, y: -10 })]);
    expect(turnCorner(corner({ inside: 170, widths: [10, 20], ranks: [1, 1] })).between).toEqual([]);
  });

  it('cuts off corners that would reach farther than two and a half allowances', () => {
    for (const ranks of [
      [1, 1],
      [1, 2],
      [2, 1],
    ] as const) {
      const { between } = turnCorner(corner({ inside: 12, widths: [10, 10], ranks }));
      expect(between).toHaveLength(2);
      for (const p of between) expect(Math.hypot(p.x, p.y)).toBeLessThan(SHARPEST * 10 * 1.1);
    }
    // The line across a sharp seam's end is square to the seam and reaches both parallels.
    const given = corner({ inside: 12, widths: [10, 10], ranks: [1, 2] });
    const [outer, inner] = turnCorner(given).between;
    expect(seenFrom(given.into, outer ?? point(0, 0))).toEqual({ along: 25, out: expect.closeTo(10, 9) });
    expect(seenFrom(given.into, inner ?? point(0, 0)).along).toBeCloseTo(25, 9);
    expect(seenFrom(given.outOf, inner ?? point(0, 0)).out).toBeCloseTo(10, 9);
  });

  it('mitres a very blunt corner whatever its ranks', () => {
    const given = corner({ inside: 165, widths: [10, 10], ranks: [1, 2] });
    const { between, reach } = turnCorner(given);
    expect(reach).toBeUndefined();
    expect(between).toHaveLength(1);
    expect(seenFrom(given.outOf, between[0] ?? point(0, 0)).out).toBeCloseTo(10, 9);
  });

  it('cuts off both parallels of an inward corner where they cross, however slight the corner is', () => {
    for (const inside of [180.01, 181, 200, 250, 300]) {
      const given = corner({ inside, widths: [10, 10], ranks: [1, 2] });
      const { before, between, after } = turnCorner(given);
      expect(between).toEqual([]);
      const [end, start] = [before.at(-1)?.to ?? point(0, 0), after[0]?.from ?? point(1, 1)];
      expect(distance(end, start)).toBeLessThan(1e-9);
      expect(seenFrom(given.into, end).out).toBeCloseTo(10, 9);
      expect(seenFrom(given.outOf, end).out).toBeCloseTo(10, 9);
    }
  });
});

it('the corner used in these tests has the angle it is asked for', () => {
  const { into, outOf } = corner({ inside: 120, widths: [1, 1], ranks: [1, 1] });
  expect(Math.asin(cross(into, outOf))).toBeCloseTo(degrees(60), 12);
});
