import { describe, expect, it } from 'vitest';
import { misnamed } from '../../../engine/checks/misnamed.ts';
import { tapeFor } from '../../../engine/checks/tape.ts';
import { point } from '../../../engine/geometry/point.ts';
import type { Garment } from '../../../engine/pattern/garment.ts';
import { inDegrees, inMm } from '../../../engine/text/figure.ts';
import { listed } from '../../../engine/text/listed.ts';
import { garment, line, notch, polygon } from '../garments.ts';

const yoke = {
  ...polygon(
    'yoke',
    [
      [0, 0],
      [100, 0],
      [100, 50],
      [0, 50],
    ],
    ['top', 'right', 'bottom', 'left'].map((name) => [name, {}]),
  ),
  lines: [{ name: 'bust', kind: 'level' as const, curves: [line(point(0, 20), point(100, 20))] }],
};

const issues = (rest: Partial<Garment>, pieces = [yoke]) => {
  const made = garment(pieces, rest);
  return misnamed(made, tapeFor(made)).map(({ code, path }) => [code, path]);
};

const corner = (edge: string, seam: string, piece = 'yoke') => ({ piece, edge, seam });

describe('what is named in a garment', () => {
  it('is there', () => {
    expect(
      issues(
        {
          seams: [
            {
              name: 's',
              a: [{ piece: 'yoke', edge: 'left' }],
              b: [{ piece: 'yoke', edge: 'right' }],
              ease: 0,
              gatherRatio: 1,
            },
          ],
          joins: [
            { kind: 'along', name: 'j', piece: 'yoke', from: 'top', to: 'right' },
            { kind: 'across', name: 'k', a: corner('top', 'left'), b: corner('top', 'right') },
          ],
          girths: [
            {
              level: 'bust',
              body: 0,
              ease: 0,
              parts: [
                { kind: 'line', piece: 'yoke', line: 'bust', times: 2 },
                { kind: 'edge', piece: 'yoke', edge: 'top', times: 2 },
              ],
            },
          ],
        },
        [{ ...yoke, notches: [notch('n', 'top', 5)] }],
      ),
    ).toEqual([]);
  });

  it.each<[string, Partial<Garment>, readonly (readonly [string, string])[]]>([
    [
      'a seam’s piece',
      {
        seams: [
          {
            name: 's',
            a: [{ piece: 'cuff', edge: 'left' }],
            b: [{ piece: 'yoke', edge: 'hem' }],
            ease: 0,
            gatherRatio: 1,
          },
        ],
      },
      [
        ['no-such-piece', 's'],
        ['no-such-edge', 's'],
      ],
    ],
    [
      'a join’s edges',
      { joins: [{ kind: 'along', name: 'j', piece: 'yoke', from: 'a', to: 'b' }] },
      [
        ['no-such-edge', 'j'],
        ['no-such-edge', 'j'],
      ],
    ],
    [
      'a corner’s edges',
      { joins: [{ kind: 'across', name: 'k', a: corner('top', 'hem'), b: corner('hem', 'right') }] },
      [
        ['no-such-edge', 'k'],
        ['no-such-edge', 'k'],
      ],
    ],
    [
      'the second corner',
      { joins: [{ kind: 'across', name: 'k', a: corner('top', 'left'), b: corner('top', 'right', 'cuff') }] },
      [
        ['no-such-piece', 'k'],
        ['no-such-piece', 'k'],
      ],
    ],
    [
      'a girth’s line',
      {
        girths: [
          { level: 'g', body: 0, ease: 0, parts: [{ kind: 'line', piece: 'yoke', line: 'hip', times: 1 }] },
        ],
      },
      [['no-such-line', 'g']],
    ],
    [
      'a girth’s piece',
      {
        girths: [
          { level: 'g', body: 0, ease: 0, parts: [{ kind: 'line', piece: 'cuff', line: 'bust', times: 1 }] },
        ],
      },
      [['no-such-piece', 'g']],
    ],
    [
      'a girth’s edge',
      {
        girths: [
          { level: 'g', body: 0, ease: 0, parts: [{ kind: 'edge', piece: 'yoke', edge: 'bust', times: 1 }] },
        ],
      },
      [['no-such-edge', 'g']],
    ],
  ])('is missed: %s', (_, rest, found) => {
    expect(issues(rest)).toEqual(found);
  });

  it('is missed where a notch stands, and told where it is there twice', () => {
    expect(issues({}, [{ ...yoke, notches: [notch('n', 'hem', 5)] }])).toEqual([
      ['no-such-edge', 'yoke/hem'],
    ]);
    expect(issues({}, [yoke, yoke, yoke])).toEqual([['name-used-twice', 'yoke']]);
    const [top] = yoke.edges;
    expect(issues({}, [{ ...yoke, edges: [...yoke.edges, ...(top ? [top, top] : [])] }])).toEqual([
      ['name-used-twice', 'yoke/top'],
    ]);
  });
});

describe('messages', () => {
  it('tell lengths to two decimals, angles to three figures, and list names once each', () => {
    expect([inMm(12.7), inMm(3), inMm(0.126), inMm(-2.5)]).toEqual(['12.7 mm', '3 mm', '0.13 mm', '-2.5 mm']);
    expect([inDegrees(0.123456), inDegrees(45)]).toEqual(['0.123°', '45°']);
    expect([listed([]), listed(['a']), listed(['a', 'b', 'a']), listed(['a', 'b', 'c'])]).toEqual([
      '',
      'a',
      'a and b',
      'a, b and c',
    ]);
  });
});
