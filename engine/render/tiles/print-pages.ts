import type { Edge } from '../../geometry/curve.ts';
import type { Result } from '../../issue.ts';
import type { Garment } from '../../pattern/garment.ts';
import { inkBounds } from '../ink-bounds.ts';
import type { PrintOptions } from '../print-options.ts';
import { type CoverWords, cover, coverSize } from './cover.ts';
import { coverWords } from './cover-words.ts';
import { grid, gridSide } from './grid.ts';
import { joinsOf } from './joins.ts';
import { lengthMarks } from './length-marks.ts';
import { map } from './map.ts';
import { onPage, type Page } from './page.ts';
import type { Paper } from './papers.ts';
import { pagesByArea, type Spread, spread } from './spread.ts';
import { type Tile, tilesOf } from './tile-grid.ts';
import { cellOn, margin, tilePage } from './tile-page.ts';

/** A garment as it goes to the printer, and what that takes. */
export interface PrintedPages {
  readonly pages: readonly Page[];
  readonly tiles: readonly Tile[];
  /** Tiles within the rectangle of the joined sheet that hold no line and are not printed. */
  readonly leftOut: number;
  /** The fewest tiles that the area of the pieces would need. */
  readonly fewestByArea: number;
  readonly columns: number;
  readonly rows: number;
}

/** More columns or rows than anyone would join. */
const most = { columns: 8, rows: 60 };

/**
 * The pages of a garment, 1:1: on one page where the paper takes everything, with what there is to say beside the
 * pieces; else on tiles to be joined, behind a first page. `cutLines` holds the cutting lines by piece name.
 * Issue: `paper-too-small` when the pieces find no room.
 */
export function printPages(
  garment: Garment,
  cutLines: ReadonlyMap<string, Edge>,
  paper: Paper,
  options: PrintOptions = {},
): Result<PrintedPages> {
  const whole = onePage(garment, cutLines, paper, options);
  if (whole) return { ok: true, value: whole, issues: [] };
  const cell = cellOn(paper);
  const laid = spread(garment, cutLines, options, { cell, ...most }, []);
  if (!laid) {
    const message = `The pieces do not fit on ${paper.name} paper, however many sheets are joined.`;
    return { ok: false, issues: [{ code: 'paper-too-small', severity: 'error', path: '--paper', message }] };
  }
  const tiles = tilesOf(laid.drawn, cell, laid);
  const words = coverWords(garment, paper, options, tiles.length);
  const marks = paper.kind === 'roll' ? [onPage(lengthMarks(paper, options.units ?? 'mm'))] : [];
  const pages = [
    firstPage(garment, words, paper, tiles, laid),
    ...tilePages(garment, tiles, laid, paper).map((page) => ({ ...page, parts: [...page.parts, ...marks] })),
  ];
  return {
    ok: true,
    value: {
      pages,
      tiles,
      leftOut: laid.columns * laid.rows - tiles.length,
      fewestByArea: pagesByArea(laid.pieces, cell),
      columns: laid.columns,
      rows: laid.rows,
    },
    issues: [],
  };
}

/** Everything on one page; nothing when it does not fit. */
function onePage(
  garment: Garment,
  cutLines: ReadonlyMap<string, Edge>,
  paper: Paper,
  options: PrintOptions,
): PrintedPages | undefined {
  const cell = { width: paper.width - 2 * margin, height: paper.height - 2 * margin };
  const words = coverWords(garment, paper, options, 1);
  const block = coverSize(garment, words);
  const laid = spread(garment, cutLines, options, { cell, columns: 1, rows: 1 }, [block]);
  const corner = laid?.blocks[0];
  if (!laid || !corner) return undefined;
  const shift = { x: margin, y: margin };
  const { ink } = cover(garment, words, block.height);
  const all = [
    { ink: laid.drawn.map(({ ink: drawn }) => drawn), shift },
    { ink, shift: { x: corner.x + margin, y: corner.y + margin } },
  ];
  const used = lowest(all.flatMap((part) => part.ink.map((i) => inkBounds(i).bottom + part.shift.y)));
  const height = paper.kind === 'sheets' ? paper.height : Math.ceil(used + margin);
  const projected = paper.kind === 'projector';
  const { units = 'mm' } = options;
  const behind = projected ? [onPage(grid(paper.width, height, gridSide(units)))] : [];
  const marks = paper.kind === 'roll' ? [onPage(lengthMarks({ width: paper.width, height }, units))] : [];
  const tiles = tilesOf(laid.drawn, cell, { columns: 1, rows: 1 });
  return {
    pages: [
      { width: paper.width, height, parts: [...behind, ...all, ...marks], weight: projected ? 2.5 : 1 },
    ],
    tiles,
    leftOut: 0,
    fewestByArea: 1,
    columns: 1,
    rows: 1,
  };
}

const lowest = (levels: readonly number[]): number => levels.reduce((a, b) => Math.max(a, b), 0);

function firstPage(
  garment: Garment,
  words: CoverWords,
  paper: Paper,
  tiles: readonly Tile[],
  laid: Spread,
): Page {
  const { width, height } = { width: Math.min(paper.width, 210), height: Math.min(paper.height, 297) };
  const depth = height - 2 * margin;
  const { ink, listTop } = cover(garment, words, depth);
  const mapLeft = 95;
  const room = { width: width - 2 * margin - mapLeft, height: depth - listTop };
  return {
    width,
    height,
    parts: [
      { ink, shift: { x: margin, y: margin } },
      { ink: map(tiles, laid.pieces, room), shift: { x: margin + mapLeft, y: margin + listTop } },
    ],
  };
}

function tilePages(garment: Garment, tiles: readonly Tile[], laid: Spread, paper: Paper): readonly Page[] {
  const joins = joinsOf(tiles, laid.drawn);
  return tiles.map((tile, i) => {
    const page = `page ${i + 2} of ${tiles.length + 1}`;
    const footer = `${garment.name} for ${garment.body}, tile ${tile.name}, ${page}`;
    const own = joins.filter(({ under, over }) => under === tile || over === tile);
    return tilePage(tile, laid.drawn, paper, own, footer);
  });
}
