import type { Edge } from '../geometry/curve.ts';
import { moved, type Point, point, vectorBetween } from '../geometry/point.ts';
import type { GradedSize } from '../grading/laid-size.ts';
import type { Garment } from '../pattern/garment.ts';
import { drawing } from '../render/drawing.ts';
import { finishedPieces } from '../render/finish.ts';
import { boxOf, type FinishedPiece } from '../render/finished-piece.ts';
import { type Shelves, type Size, standInRows } from '../render/layout.ts';
import { lettered } from '../render/lettering.ts';
import type { PrintOptions } from '../render/print-options.ts';
import { testSquares, testSquaresSize } from '../render/test-squares.ts';
import { attributesOf } from './attributes.ts';
import { blockNames } from './block-names.ts';
import type { DxfBlock } from './drawn.ts';
import { drawnInk } from './drawn-ink.ts';
import { type Flavour, versionOf } from './flavour.ts';
import { wholePiece } from './whole-piece.ts';
import { writeDxf } from './write-dxf.ts';

/** Free between neighbours, mm. */
const gap = 20;

/** Width of the drawing where no piece asks for more, mm: a table's. */
const tableWidth = 1500;

const note = 'Units are millimetres. Measure both squares first.';

/** A garment with its cutting lines by piece name. */
interface Laid {
  readonly garment: Garment;
  readonly cutLines: ReadonlyMap<string, Edge>;
}

/** A cutting file, and what was drawn for it, in the order of the pieces. */
export interface DrawnCuttingFile {
  readonly text: string;
  readonly blocks: readonly DxfBlock[];
}

/** A piece of a garment, in one size of it. */
interface SizedPiece {
  readonly finished: FinishedPiece;
  readonly garment: Garment;
  /** None of a garment drafted in one size; then its block has its lowest corner at 0, 0, else its anchor. */
  readonly size: string | undefined;
}

/**
 * The cutting file of a garment: every piece a block, upright on its grain, those that are cut on the fold unfolded, with
 * all lines, marks and words that a sheet shows and with its cutting list as attributes; beside them the test squares.
 * `cutLines` holds the cutting lines by piece name.
 */
export const cuttingFile = (made: Laid, flavour: Flavour, options: PrintOptions = {}): string =>
  cutGarment(made, flavour, options).text;

/** The same, with what its blocks were drawn from. */
export function cutGarment(
  { garment, cutLines }: Laid,
  flavour: Flavour,
  options: PrintOptions = {},
): DrawnCuttingFile {
  const pieces = finishedPieces(garment, cutLines, options.notches ?? 'slit').map((finished) => ({
    finished,
    garment,
    size: undefined,
  }));
  return fileOf(pieces, flavour, options);
}

/**
 * The cutting file of a grade: a block for each piece in each size, whose 0, 0 is what the sizes are aligned on. They stand
 * apart, size by size; inserted at one place they are a nest.
 */
export const gradedCuttingFile = (
  sizes: readonly GradedSize[],
  flavour: Flavour,
  options: PrintOptions = {},
): string => cutSizes(sizes, flavour, options).text;

/** The same, with what its blocks were drawn from, size by size. */
export const cutSizes = (
  sizes: readonly GradedSize[],
  flavour: Flavour,
  options: PrintOptions = {},
): DrawnCuttingFile =>
  fileOf(
    sizes.flatMap(({ of, made: { garment }, pieces }) =>
      [...pieces.values()].map(({ finished }) => ({ finished, garment, size: of.name })),
    ),
    flavour,
    options,
  );

function fileOf(pieces: readonly SizedPiece[], flavour: Flavour, options: PrintOptions): DrawnCuttingFile {
  const whole = pieces.map((one) => ({
    ...one,
    finished: lettered(wholePiece(one.finished), one.garment, options),
  }));
  const names = blockNames(whole.map(({ finished: { piece }, size }) => ({ piece, size })));
  const boxes = whole.map(({ finished }) => boxOf(finished));
  const { corners, paper } = shelves(
    [...whole.map(({ size }) => size), undefined],
    [...boxes, testSquaresSize],
  );
  const cornerOf = (i: number): Point => corners[i] ?? point(gap, gap);
  // Down the paper is up in the file, which has no negative places.
  const onTable = ({ x, y }: Point): Point => point(x, paper.height - y);
  const blocks = whole.map(({ finished, garment, size }, i): DxfBlock => {
    const { corner, height } = boxes[i] ?? { corner: point(0, 0), height: 0 };
    const base = size === undefined ? point(corner.x, corner.y + height) : point(0, 0);
    return {
      name: names[i] ?? '',
      drawn: drawnInk(drawing(finished), flavour, (p) => point(p.x - base.x, base.y - p.y)),
      attributes: attributesOf(finished.piece, garment, size),
      place: onTable(moved(base, vectorBetween(corner, cornerOf(i)))),
    };
  });
  const squares = testSquares(cornerOf(whole.length), note);
  const text = writeDxf(
    { blocks, beside: drawnInk(squares, flavour, onTable), width: paper.width, height: paper.height },
    versionOf[flavour],
  );
  return { text, blocks };
}

/** Where each rectangle stands: in rows, those of one size together, sizes one below the other. */
function shelves(sizes: readonly (string | undefined)[], boxes: readonly Size[]): Shelves {
  const corners: Point[] = [];
  let [width, height] = [0, 0];
  for (const size of new Set(sizes)) {
    const own = [...boxes.keys()].filter((i) => sizes[i] === size);
    const stood = standInRows(
      own.flatMap((i) => boxes[i] ?? []),
      tableWidth,
      gap,
    );
    for (const [k, i] of own.entries()) {
      const { x, y } = stood.corners[k] ?? point(gap, gap);
      corners[i] = point(x, y + height);
    }
    width = Math.max(width, stood.paper.width);
    height += stood.paper.height;
  }
  return { corners, paper: { width, height } };
}
