import { describe, expect, it } from 'vitest';
import { endsSquare, insideAngle, turnBetween } from '../../../engine/checks/corner.ts';
import { point } from '../../../engine/geometry/point.ts';
import { heading } from '../../../engine/geometry/vector.ts';
import { edge, line, polygon } from '../garments.ts';

const degrees = (radians: number | undefined): number => ((radians ?? Number.NaN) * 180) / Math.PI;

describe('the angle inside the cloth', () => {
  const gusset = polygon(
    'gusset',
    [
      [0, 0],
      [100, 0],
      [100, 100],
      [50, 50],
      [0, 100],
    ],
    ['top', 'right', 'in', 'out', 'left'].map((name) => [name, {}]),
  );

  it('is that of the corner, whichever of its edges is named first', () => {
    for (const [a, b, angle] of [
      ['left', 'top', 90],
      ['right', 'in', 45],
      ['in', 'out', 270],
      ['out', 'left', 45],
    ] as const) {
      expect(degrees(insideAngle(gusset, a, b))).toBeCloseTo(angle, 9);
      expect(degrees(insideAngle(gusset, b, a))).toBeCloseTo(angle, 9);
    }
  });

  it('is none where edges are no neighbours or are not there', () => {
    expect(insideAngle(gusset, 'top', 'in')).toBeUndefined();
    expect(insideAngle(gusset, 'top', 'hem')).toBeUndefined();
    expect(insideAngle(gusset, 'hem', 'top')).toBeUndefined();
  });

  it('at the end of the first named counts where two edges meet at both their ends', () => {
    const arch = {
      kind: 'cubic',
      from: point(0, 0),
      handle1: point(0, -60),
      handle2: point(70, -30),
      to: point(100, 0),
    };
    const bow = {
      ...polygon('bow', [], []),
      edges: [edge('arch', [arch as never]), edge('foot', [line(point(100, 0), point(0, 0))])],
    };
    expect(degrees(insideAngle(bow, 'arch', 'foot'))).toBeCloseTo(45, 9);
    expect(degrees(insideAngle(bow, 'foot', 'arch'))).toBeCloseTo(90, 9);
  });
});

describe('the turn between two headings', () => {
  it('is positive clockwise as drawn', () => {
    expect(degrees(turnBetween(heading(0.2), heading(0.2 + Math.PI / 3)))).toBeCloseTo(60, 9);
    expect(degrees(turnBetween(heading(0.2), heading(0.2 - Math.PI / 3)))).toBeCloseTo(-60, 9);
    expect(degrees(turnBetween(heading(3), heading(-3)))).toBeCloseTo(360 - 2 * degrees(3), 9);
  });
});

describe('an allowance ends square', () => {
  const side = (allowance: number, rank: number) => edge('side', [], { allowance, rank });
  const quarter = Math.PI / 2;

  it('where its seam is sewn before the edge across it, at an outward corner', () => {
    expect(endsSquare(side(10, 1), side(10, 2), quarter)).toBe(true);
    expect(endsSquare(side(10, 2), side(10, 1), quarter)).toBe(false);
    expect(endsSquare(side(10, 1), side(10, 1), quarter)).toBe(false);
    expect(endsSquare(side(10, 1), side(10, 2), -quarter)).toBe(false);
  });

  it('where it reaches no farther than 2.5 allowances of the wider', () => {
    // Across a corner that turns by t the end lies w / sin t beyond it: 2.5 w at asin(1 / 2.5).
    const sharpest = Math.asin(1 / 2.5);
    for (const turn of [sharpest, Math.PI - sharpest]) {
      const blunter = turn + (turn < quarter ? 0.01 : -0.01);
      expect(endsSquare(side(10, 1), side(10, 2), blunter)).toBe(true);
      expect(endsSquare(side(6, 1), side(10, 2), blunter)).toBe(true);
      expect(endsSquare(side(10, 1), side(10, 2), turn - (blunter - turn))).toBe(false);
      expect(endsSquare(side(20, 1), side(10, 2), turn - (blunter - turn))).toBe(true);
    }
  });
});
