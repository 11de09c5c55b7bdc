import { describe, expect, it } from 'vitest';
import { edgesSetBack, setBack, stretch } from '../../../drafts/lining/set-back.ts';
import { seamEdge, straight } from '../../../drafts/piece-edges.ts';
import { arc } from '../../../engine/geometry/arc.ts';
import {
  edgeEnd,
  edgeLength,
  edgeStart,
  endDirection,
  startDirection,
} from '../../../engine/geometry/edge.ts';
import { distance, point } from '../../../engine/geometry/point.ts';
import { angleOf, vector } from '../../../engine/geometry/vector.ts';
import type { PieceEdge } from '../../../engine/pattern/piece.ts';

const corners = [point(0, 0), point(100, 0), point(100, 80), point(0, 80)] as const;
const line = (name: string, from: number, to: number): PieceEdge =>
  seamEdge(name, straight(corners[from] ?? point(0, 0), corners[to] ?? point(0, 0)), 10, 1);
const square = [line('top', 0, 1), line('side', 1, 2), line('bottom', 2, 3), line('left', 3, 0)];
const isOf =
  (...names: readonly string[]) =>
  ({ name }: PieceEdge): boolean =>
    names.includes(name);

const named = (edges: readonly PieceEdge[], name: string): PieceEdge => {
  const edge = edges.find((each) => each.name === name);
  if (!edge) throw new Error(`no edge ${name}`);
  return edge;
};

describe('an outline with edges set back', () => {
  it('slides a corner along the edge that stays, and cuts that short', () => {
    const set = setBack(square, { isSet: isOf('top'), by: 5 });
    expect(edgeStart(named(set, 'top'))).toEqual(point(0, 5));
    expect(edgeEnd(named(set, 'top'))).toEqual(point(100, 5));
    expect(edgeLength(named(set, 'side'))).toBeCloseTo(75, 9);
    expect(edgeLength(named(set, 'left'))).toBeCloseTo(75, 9);
    expect(named(set, 'bottom')).toEqual(named(square, 'bottom'));
  });

  it('moves a corner between two edges that are set back in from both', () => {
    const set = setBack(square, { isSet: isOf('top', 'side'), by: 5 });
    expect(distance(edgeEnd(named(set, 'top')), point(95, 5))).toBeLessThan(1e-9);
    expect(distance(edgeEnd(named(set, 'side')), point(95, 80))).toBeLessThan(1e-9);
  });

  it('still closes', () => {
    const set = setBack(square, { isSet: isOf('top', 'side'), by: 5 });
    for (const [i, edge] of set.entries())
      expect(distance(edgeEnd(edge), edgeStart(set[(i + 1) % set.length] ?? edge))).toBeLessThan(1e-9);
  });

  it('keeps the angle of a curve to an edge that bends away below it, so that its line runs on over the seam', () => {
    const bending = arc(point(150, 0), vector(-150, 0), -0.5, 0.001).curves;
    const foot = bending.at(-1)?.to ?? point(0, 0);
    const curve: PieceEdge = seamEdge(
      'curve',
      [
        {
          kind: 'cubic',
          from: point(-90, -20),
          handle1: point(-60, 10),
          handle2: point(-30, 0),
          to: point(0, 0),
        },
      ],
      10,
      1,
    );
    const outline = [
      curve,
      seamEdge('seam', bending, 10, 1),
      seamEdge('rest', straight(foot, point(-90, 60)), 10, 1),
      seamEdge('left', straight(point(-90, 60), point(-90, -20)), 10, 1),
    ];
    const between = (edges: readonly PieceEdge[]): number =>
      angleOf(startDirection(named(edges, 'seam'))) - angleOf(endDirection(named(edges, 'curve')));
    const set = setBack(outline, { isSet: isOf('curve'), by: 40 });
    expect(between(set)).toBeCloseTo(between(outline), 6);
    expect(angleOf(startDirection(named(set, 'seam')))).not.toBeCloseTo(Math.PI / 2, 1);
  });

  it('rounds its corners where that is asked, and leaves the centre at right angles', () => {
    const bent = (
      name: string,
      from: readonly [number, number],
      to: readonly [number, number],
    ): PieceEdge => {
      const at = (share: number) =>
        point(from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1]));
      return seamEdge(
        name,
        [{ kind: 'cubic', from: at(0), handle1: at(1 / 3), handle2: at(2 / 3), to: at(1) }],
        10,
        1,
      );
    };
    const run = [
      seamEdge('centre front', straight(point(0, 200), point(0, 0)), 0, 1),
      bent('across', [0, 0], [80, -30]),
      bent('up', [80, -30], [80, -150]),
      seamEdge('shoulder', straight(point(80, -150), point(180, -150)), 10, 1),
    ];
    const [across, up] = edgesSetBack(run, { isSet: isOf('across', 'up'), by: 40, rounded: true });
    if (!across || !up) throw new Error('no edges');
    expect(distance(edgeStart(across), point(0, 40))).toBeLessThan(1e-9);
    expect(angleOf(startDirection(across))).toBeCloseTo(0, 9);
    expect(distance(edgeEnd(across), point(80, -30))).toBeCloseTo(40, 9);
    expect(angleOf(endDirection(across))).toBeCloseTo(angleOf(startDirection(up)), 9);
    expect(distance(edgeEnd(up), point(120, -150))).toBeLessThan(1e-9);
  });
});

describe('a stretch of an edge', () => {
  it('is what lies between two places, or all of it', () => {
    const top = named(square, 'top');
    expect(edgeStart(stretch(top, 10, 60))).toEqual(point(10, 0));
    expect(edgeEnd(stretch(top, 10, 60))).toEqual(point(60, 0));
    expect(stretch(top, 0, 100)).toEqual(top);
  });
});
