import { describe, expect, it } from 'vitest';
import { unjoined } from '../../../engine/checks/run-on.ts';
import { tapeFor } from '../../../engine/checks/tape.ts';
import type { Garment } from '../../../engine/pattern/garment.ts';
import type { Piece } from '../../../engine/pattern/piece.ts';
import type { Join } from '../../../engine/pattern/seam.ts';
import { drafted, shippedBody } from '../../drafts/drafted.ts';
import { garment, polygon } from '../garments.ts';

/*
 * Common practice, no source: before a pattern is cut, every line that runs over a seam or a fold is laid together there
 * and trued. So whoever draws a pattern says of each such place that the line runs on, or that it is meant to turn.
 */

const { garment: dress } = drafted('dress', shippedBody('leading-lady'));

const found = (made: Garment): readonly string[] =>
  unjoined(made, tapeFor(made)).map(({ code, path }) => `${code} ${path}`);

/** Pieces made by hand leave their edges open unless told otherwise. */
const leftOpenNowhere = (piece: Piece): Piece => ({
  ...piece,
  edges: piece.edges.map(({ open: _, ...edge }) => edge),
});

/** Two squares beside each other: sewn in the middle, their tops one line. */
const left = polygon(
  'left',
  [
    [0, 0],
    [100, 0],
    [100, 100],
    [0, 100],
  ],
  [
    ['top', { rank: 2 }],
    ['inner', { rank: 1 }],
    ['hem', { rank: 3, turn: 'hem' }],
    ['fold', { turn: 'fold', allowance: 0, rank: 9 }],
  ],
);
const right = polygon(
  'right',
  [
    [100, 0],
    [200, 0],
    [200, 100],
    [100, 100],
  ],
  [
    ['top', { rank: 2 }],
    ['outer', { rank: 1 }],
    ['hem', { rank: 3, turn: 'hem' }],
    ['inner', { rank: 1 }],
  ],
);
const band = polygon(
  'band',
  [
    [0, -30],
    [200, -30],
    [200, 0],
    [0, 0],
  ],
  [
    ['upper', { rank: 3 }],
    ['end', { rank: 4 }],
    ['lower', { rank: 2 }],
    ['beginning', { rank: 4 }],
  ],
);
const sewn = (joins: readonly Join[]): Garment =>
  garment([left, right, band].map(leftOpenNowhere), {
    joins,
    seams: [
      {
        name: 'middle',
        a: [{ piece: 'left', edge: 'inner' }],
        b: [{ piece: 'right', edge: 'inner', reversed: true }],
        ease: 0,
        gatherRatio: 1,
      },
      {
        name: 'band',
        a: [
          { piece: 'left', edge: 'top' },
          { piece: 'right', edge: 'top' },
        ],
        b: [{ piece: 'band', edge: 'lower', reversed: true }],
        ease: 0,
        gatherRatio: 1,
      },
    ],
  });

const atSeam = (edge: string) => ({
  a: { piece: 'left', edge, seam: 'inner' },
  b: { piece: 'right', edge, seam: 'inner' },
});
const all: readonly Join[] = [
  { kind: 'across', name: 'top over the seam', ...atSeam('top') },
  { kind: 'across', name: 'hem over the seam', ...atSeam('hem') },
  { kind: 'mirror', name: 'top at the fold', a: { piece: 'left', edge: 'top', seam: 'fold' } },
  { kind: 'mirror', name: 'hem at the fold', turns: true, a: { piece: 'left', edge: 'hem', seam: 'fold' } },
];

describe('a line that goes on', () => {
  it('is spoken of in a dress wherever it does', () => {
    expect(found(dress)).toEqual([]);
  });

  it('is missed wherever it has no join: over a seam, as a hem, and at a fold', () => {
    expect(found(sewn(all))).toEqual([]);
    for (const [i, path] of ['left/top', 'left/hem', 'left/top', 'left/hem'].entries())
      expect(found(sewn(all.toSpliced(i, 1)))).toEqual([`line-unjoined ${path}`]);
  });

  it('may be named from either side of the seam', () => {
    const turned = all.map(
      (join): Join => (join.kind === 'across' ? { ...join, a: join.b, b: join.a } : join),
    );
    expect(found(sewn(turned))).toEqual([]);
  });

  it('is missed where a join leads from one end of it elsewhere', () => {
    const [top, hem, ...folds] = all;
    if (top?.kind !== 'across' || hem?.kind !== 'across') throw new Error('no join across');
    for (const crossed of [
      [
        { ...top, b: hem.b },
        { ...hem, b: top.b },
      ],
      [
        { ...top, a: top.b, b: hem.a },
        { ...hem, a: hem.b, b: top.a },
      ],
    ])
      expect(found(sewn([...crossed, ...folds]))).toEqual([
        'line-unjoined left/top',
        'line-unjoined left/hem',
      ]);
  });

  it('is missed in a dress whose joins are taken out, one or all', () => {
    expect(found({ ...dress, joins: [] }).length).toBeGreaterThan(30);
    // What is felled is sewn onto lines that are there, so the joins of a lining may be more than is asked for.
    const asked = dress.joins.filter(({ name }) => !name.startsWith('lining'));
    const unnoticed = asked.filter(
      (join) => found({ ...dress, joins: dress.joins.filter((other) => other !== join) }).length === 0,
    );
    // Joins beyond what is asked for: a waist is sewn before the centre back, and with sleeves no strap is turned along its armhole.
    expect(unnoticed.map(({ name }) => name)).toEqual([
      'waist at centre back',
      "front strap's end at its outer underarm edge",
      "back strap's end at its outer edge",
      'skirt waist at centre back',
    ]);
  });
});
