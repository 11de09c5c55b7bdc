import { describe, expect, it } from 'vitest';
import { labelFaults } from '../../../engine/checks/cut-ready.ts';
import type { Rectangle } from '../../../engine/finishing/rectangle.ts';
import { contains } from '../../../engine/geometry/inside.ts';
import { point } from '../../../engine/geometry/point.ts';
import type { Piece } from '../../../engine/pattern/piece.ts';
import { boxOf } from '../../../engine/render/finished-piece.ts';
import type { InkWords } from '../../../engine/render/ink.ts';
import { inkBounds } from '../../../engine/render/ink-bounds.ts';
import { label } from '../../../engine/render/label.ts';
import { labelBeside } from '../../../engine/render/label-beside.ts';
import { textSizes } from '../../../engine/render/line-types.ts';
import { polygon } from '../garments.ts';

const words = {
  heading: '7 back strap',
  lines: [
    'cut 2 self, a pair',
    'cut 2 lining, a pair',
    'seam allowance 12.7 mm included',
    'but shoulder 12.7, outer 9.5, inner 6.4, back end 12.7 mm',
    'dress for leading lady, 4 May',
  ],
  wearer: ['cup C, bust 920, under-bust 750,', 'waist 740, hip 990 mm'],
};

/** A strap with its grainline near one edge. */
function strap(width: number, height: number): Piece {
  const outline = polygon(
    'back strap',
    [
      [0, 0],
      [width, 0],
      [width, height],
      [0, height],
    ],
    ['shoulder', 'outer', 'back end', 'inner'].map((name) => [name, {}]),
  );
  return { ...outline, grain: { from: point(width / 5, 5), to: point(width / 5, height - 5) } };
}

function boxAbout(row: InkWords): Rectangle {
  const { left, right, top, bottom } = inkBounds(row);
  return { middle: point((left + right) / 2, (top + bottom) / 2), width: right - left, height: bottom - top };
}

const rowsOn = (piece: Piece): readonly InkWords[] => label(piece, words) ?? [];

const textsOn = (piece: Piece): readonly string[] => rowsOn(piece).map(({ text }) => text);

describe('the label of a piece', () => {
  it('has all its words in full size where there is room', () => {
    const rows = rowsOn(strap(300, 400));
    expect(rows.map(({ text }) => text)).toEqual([words.heading, ...words.lines, ...words.wearer]);
    expect(rows[0]?.size).toBe(textSizes.heading);
  });

  it('sets its letters smaller before it goes without the wearer, as long as they can be read', () => {
    const sizes = [120, 62, 54].map((width) => {
      const rows = rowsOn(strap(width, 1.2 * width));
      expect(rows.map(({ text }) => text).join(' '), `${width} mm`).toContain(words.wearer.join(' '));
      return rows[0]?.size ?? 0;
    });
    expect(sizes[0]).toBe(textSizes.heading);
    expect(sizes.at(-1)).toBeLessThan(textSizes.heading);
    expect(textsOn(strap(44, 53)).join(' ')).not.toContain(words.wearer[0]);
  });

  it('goes without the wearer, breaks its lines and gets smaller as the piece does, and loses no other word', () => {
    const sizes = [80, 60, 50, 44].map((width) => {
      const rows = rowsOn(strap(width, 1.2 * width));
      const said = rows.map(({ text }) => text).join(' ');
      expect(said, `${width} mm`).toContain([words.heading, ...words.lines].join(' '));
      return rows[0]?.size ?? 0;
    });
    expect(sizes).toEqual(sizes.toSorted((a, b) => b - a));
    expect(sizes[0]).toBeGreaterThan(sizes.at(-1) ?? 0);
  });

  it('breaks a line between words only where there is no room for it whole', () => {
    const [long = ''] = words.lines.filter((text) => text.startsWith('but'));
    expect(textsOn(strap(200, 200))).toContain(long);
    expect(textsOn(strap(44, 53))).not.toContain(long);
  });

  it('lets its rows find places of their own where they have none together', () => {
    const narrow = strap(24, 120);
    const rows = rowsOn(narrow);
    expect(rows.map(({ text }) => text).join(' ')).toBe([words.heading, ...words.lines].join(' '));
    expect(labelFaults(narrow, rows.map(boxAbout))).toEqual([]);
  });

  it('is none where there is no room at all', () => {
    expect(label(strap(12, 40), words)).toBeUndefined();
  });
});

describe('the label beside a piece', () => {
  const finished = { piece: strap(12, 40), cut: [], notches: [], lettering: [] };
  const [leader, ...rows] = labelBeside(finished, words);

  it('has all its words but the wearer to the right of every line', () => {
    expect(rows.map((ink) => ink.kind === 'words' && ink.text)).toEqual([words.heading, ...words.lines]);
    for (const ink of rows) expect(inkBounds(ink).left).toBeGreaterThan(12);
  });

  it('is led to the cloth it speaks of', () => {
    const end = leader?.kind === 'chain' ? leader.curves[0]?.to : undefined;
    expect(end && contains(finished.piece.edges, end)).toBe(true);
  });

  it('belongs to the box of the piece', () => {
    expect(boxOf({ ...finished, lettering: [...rows] }).width).toBeGreaterThan(40);
  });
});
