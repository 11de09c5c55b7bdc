import { describe, expect, test } from 'vitest';
import { point } from '../../../../engine/geometry/point.ts';
import { type Ink, stroke } from '../../../../engine/render/ink.ts';
import { bounded, inkBounds } from '../../../../engine/render/ink-bounds.ts';
import { joinsOf } from '../../../../engine/render/tiles/joins.ts';
import { readPaper } from '../../../../engine/render/tiles/papers.ts';
import { rowLetters, tilesOf } from '../../../../engine/render/tiles/tile-grid.ts';

const cell = { width: 100, height: 100 };
const grid = { columns: 3, rows: 3 };
const namesOn = (...ink: readonly Ink[]) => tilesOf(bounded(ink), cell, grid).map(({ name }) => name);

describe('tiles', () => {
  test('are printed where a line runs, and nowhere else', () => {
    expect(namesOn(stroke('cut', point(50, 50), point(250, 50)))).toEqual(['A1', 'A2', 'A3']);
    expect(namesOn(stroke('cut', point(50, 150), point(150, 220)))).toEqual(['B1', 'B2', 'C2']);
  });

  test('inside a ring that runs on other tiles are left out', () => {
    const corners = [point(50, 50), point(250, 50), point(250, 250), point(50, 250)];
    const ring = corners.map((from, i) => stroke('cut', from, corners[(i + 1) % 4] ?? from));
    expect(namesOn(...ring)).toEqual(['A1', 'A2', 'A3', 'B1', 'B3', 'C1', 'C2', 'C3']);
  });

  test('are joined only where something runs across', () => {
    const ink = bounded([
      stroke('cut', point(50, 50), point(150, 50)),
      stroke('cut', point(50, 150), point(90, 150)),
    ]);
    const joins = joinsOf(tilesOf(ink, cell, grid), ink);
    expect(joins.map(({ under, over, side }) => [under.name, over.name, side])).toEqual([
      ['A1', 'A2', 'right'],
    ]);
  });

  test('have rows from A to Z and on from AA', () => {
    expect([0, 25, 26, 51, 52].map(rowLetters)).toEqual(['A', 'Z', 'AA', 'AZ', 'BA']);
  });
});

describe('text', () => {
  test('turned to read upwards takes the room above and below its pivot', () => {
    const { left, right, top, bottom } = inkBounds({
      kind: 'words',
      text: 'centre front',
      at: point(10, 21),
      size: 3,
      anchored: 'middle',
      turnedAbout: point(10, 20),
    });
    expect(right - left).toBeCloseTo(3);
    expect((left + right) / 2).toBeCloseTo(10);
    expect(bottom - top).toBeGreaterThan(15);
    expect((top + bottom) / 2).toBeCloseTo(20);
  });
});

describe('paper', () => {
  test.each([
    ['a4', 210, 297],
    ['A0', 841, 1189],
    ['letter', 215.9, 279.4],
    ['roll:914', 914, 5080],
    ['roll:609.6', 609.6, 5080],
  ])('%s is %d by %d mm (ISO 216, ANSI; a roll as long as a PDF page may be)', (name, width, height) => {
    expect(readPaper(name)).toMatchObject({ ok: true, value: { width, height } });
  });

  test.each([['a44444'], [''], ['roll'], ['roll:1e3'], ['roll:99999']])('“%s” is no paper', (name) => {
    expect(readPaper(name).ok).toBe(false);
  });
});
