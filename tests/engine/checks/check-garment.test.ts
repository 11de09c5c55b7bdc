import { describe, expect, it } from 'vitest';
import { checkGarment } from '../../../engine/checks/check-garment.ts';
import { arcLength } from '../../../engine/geometry/arc-length.ts';
import type { Curve } from '../../../engine/geometry/curve.ts';
import { point } from '../../../engine/geometry/point.ts';
import { reversed } from '../../../engine/geometry/split.ts';
import type { Garment } from '../../../engine/pattern/garment.ts';
import type { Piece } from '../../../engine/pattern/piece.ts';
import { cubic, edge, garment, line, notch, piece } from '../garments.ts';

/** A front and a back that meet in a curved side seam; both 400 mm long, together 500 mm wide. */
const side: Curve = cubic(point(250, 0), point(230, 150), point(230, 250), point(250, 400));

/** The seam is the same from both ends, so its middle lies at the waist. */
const half = arcLength(side, 1e-9) / 2;

const front: Piece = piece(
  'front',
  [
    edge('top', [line(point(0, 0), point(250, 0))], { rank: 2 }),
    edge('side', [side]),
    edge('hem', [line(point(250, 400), point(0, 400))], { turn: 'hem', rank: 3 }),
    edge('centre', [line(point(0, 400), point(0, 0))], { turn: 'fold', allowance: 0 }),
  ],
  {
    notches: [notch('fold', 'top', 0, 'fold'), notch('waist', 'side', half, 'level')],
    lines: [{ name: 'waist level', kind: 'level', curves: [line(point(10, 200), point(200, 200))] }],
  },
);

const back: Piece = piece(
  'back',
  [
    edge('top', [line(point(250, 0), point(500, 0))], { rank: 2 }),
    edge('centre', [line(point(500, 0), point(500, 400))], { turn: 'fold', allowance: 0 }),
    edge('hem', [line(point(500, 400), point(250, 400))], { turn: 'hem', rank: 3 }),
    edge('side', [reversed(side)]),
  ],
  {
    notches: [notch('fold', 'top', 250, 'fold'), notch('waist', 'side', half, 'level')],
    lines: [{ name: 'waist level', kind: 'level', curves: [line(point(300, 200), point(490, 200))] }],
  },
);

const shift: Garment = garment([front, back], {
  seams: [
    {
      name: 'side seam',
      a: [{ piece: 'front', edge: 'side' }],
      b: [{ piece: 'back', edge: 'side', reversed: true }],
      ease: 0,
      gatherRatio: 1,
    },
  ],
  joins: [
    {
      kind: 'across',
      name: 'top over the side seam',
      a: { piece: 'front', edge: 'top', seam: 'side' },
      b: { piece: 'back', edge: 'top', seam: 'side' },
    },
    { kind: 'mirror', name: 'top at centre front', a: { piece: 'front', edge: 'top', seam: 'centre' } },
    { kind: 'mirror', name: 'top at centre back', a: { piece: 'back', edge: 'top', seam: 'centre' } },
    { kind: 'mirror', name: 'hem at centre front', a: { piece: 'front', edge: 'hem', seam: 'centre' } },
    { kind: 'mirror', name: 'hem at centre back', a: { piece: 'back', edge: 'hem', seam: 'centre' } },
    {
      kind: 'across',
      name: 'hem over the side seam',
      a: { piece: 'front', edge: 'hem', seam: 'side' },
      b: { piece: 'back', edge: 'hem', seam: 'side' },
    },
  ],
  girths: [
    {
      level: 'waist',
      body: 960,
      ease: 40,
      parts: [
        { kind: 'line', piece: 'front', line: 'waist level', times: 2 },
        { kind: 'line', piece: 'back', line: 'waist level', times: 2 },
      ],
    },
  ],
});

describe('checking a garment', () => {
  it('finds a true garment true and reports every seam, join and girth', () => {
    const report = checkGarment(shift);
    expect(report.issues).toEqual([]);
    expect(report).toMatchObject({ ok: true, garment: 'sample', body: 'the understudy', notches: 4 });
    expect(report.seams.map(({ name, mismatch }) => [name, mismatch < 1e-5])).toEqual([['side seam', true]]);
    expect(report.joins).toHaveLength(6);
    for (const { angle } of report.joins) expect(angle).toBeCloseTo(0, 9);
    expect(report.girths).toEqual([
      {
        level: 'waist',
        body: 960,
        ease: 40,
        target: 1000,
        finished: expect.closeTo(1000, 6),
        error: expect.closeTo(0, 6),
      },
    ]);
  });

  it('finds everything that is wrong at once', () => {
    const bent = cubic(point(250, 0), point(235, 150), point(230, 250), point(250, 400));
    const broken = garment(
      [{ ...front, edges: front.edges.map((e) => (e.name === 'side' ? { ...e, curves: [bent] } : e)) }, back],
      {
        seams: shift.seams,
        joins: shift.joins,
        girths: shift.girths,
      },
    );
    const report = checkGarment(broken);
    expect(report.ok).toBe(false);
    expect(report.issues.map((issue) => issue.code)).toEqual([
      'seam-does-not-walk',
      'join-not-true',
      'girth-does-not-close',
    ]);
    for (const issue of report.issues) expect(issue.limits).toBeDefined();
  });

  it('finds names that lead nowhere, and leaves what they belong to out of the figures', () => {
    const report = checkGarment({
      ...shift,
      seams: [
        ...shift.seams,
        {
          name: 'waist seam',
          a: [{ piece: 'skirt', edge: 'waist' }],
          b: [{ piece: 'front', edge: 'waist' }],
          ease: 0,
          gatherRatio: 1,
        },
      ],
      joins: [...shift.joins, { kind: 'along', name: 'neckline', piece: 'front', from: 'top', to: 'neck' }],
      girths: [
        {
          level: 'hip',
          body: 1,
          ease: 0,
          parts: [{ kind: 'line', piece: 'front', line: 'hip level', times: 2 }],
        },
      ],
    });
    expect(report.issues.map((issue) => [issue.code, issue.path])).toEqual([
      ['no-such-piece', 'waist seam'],
      ['no-such-edge', 'waist seam'],
      ['no-such-edge', 'neckline'],
      ['no-such-line', 'hip'],
    ]);
    expect(report.seams).toHaveLength(1);
    expect(report.joins).toHaveLength(shift.joins.length);
    expect(report.girths).toEqual([]);
  });

  it('finds two pieces or two edges of one name', () => {
    const twice = {
      ...front,
      edges: [...front.edges.slice(0, 3), { ...front.edges[3], name: 'top' }],
    } as Piece;
    const codes = (pieces: readonly Piece[]) =>
      checkGarment(garment(pieces)).issues.map((issue) => issue.code);
    expect(codes([front, front])).toContain('name-used-twice');
    expect(codes([twice])).toContain('name-used-twice');
  });

  it('takes other bounds', () => {
    const wide = { seam: 10, join: 10, girth: 10, kink: 1, cutLine: 1 };
    const bent = cubic(point(250, 0), point(235, 150), point(230, 250), point(250, 400));
    const edges = front.edges.map((e) => (e.name === 'side' ? { ...e, curves: [bent] } : e));
    const pieces = shift.pieces.map((each) => (each.name === front.name ? { ...each, edges } : each));
    expect(checkGarment({ ...shift, pieces }, wide).ok).toBe(true);
  });
});
