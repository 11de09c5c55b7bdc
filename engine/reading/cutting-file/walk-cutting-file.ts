import { checkGarment } from '../../checks/check-garment.ts';
import { cutReady } from '../../checks/cut-ready.ts';
import { notchDepthFaults } from '../../checks/notch-depth.ts';
import { overlapFaults } from '../../checks/overlaps.ts';
import type { Report } from '../../checks/report.ts';
import type { DxfBlock } from '../../cutting-file/drawn.ts';
import type { Flavour } from '../../cutting-file/flavour.ts';
import { boundingBox, boundsMeet } from '../../geometry/bounds.ts';
import type { Edge } from '../../geometry/curve.ts';
import { point, vectorBetween } from '../../geometry/point.ts';
import { FILE } from '../../geometry/tolerance.ts';
import { movedBy, transformedCurve } from '../../geometry/transform.ts';
import type { Issue } from '../../issue.ts';
import type { IssueCode } from '../../issue-codes/issue-codes.ts';
import type { Garment } from '../../pattern/garment.ts';
import { squares } from '../../render/test-squares.ts';
import { fixedMm, inMm } from '../../text/figure.ts';
import { messageOf } from '../../text/message-of.ts';
import { fileBounds } from '../file-bounds.ts';
import { followFaults } from './follow-faults.ts';
import { pieceAsCut } from './piece-as-cut.ts';
import { type ReadBlock, type ReadCuttingFile, readBlocks } from './read-blocks.ts';

/** What a cutting file is to hold: a garment as it was found to be, and what was drawn of its pieces, in their order. */
export interface ToBeCut {
  readonly garment: Garment;
  readonly report: Report;
  readonly blocks: readonly DxfBlock[];
}

/**
 * Chords have corners that the curve has not, and are shorter: what is asked of directions, or to 0.001 mm, was asked of the curves, and
 * the chords are held to those.
 */
const ofCurvesOnly: ReadonlySet<IssueCode> = new Set<IssueCode>([
  'kink-in-edge',
  'join-not-true',
  'shape-not-true',
  'notch-off-edge',
  'hem-lies-not-flat',
  'allowances-not-flush',
]);

/** Millimetres, as the header of a cutting file says it. */
const MILLIMETRES = 4;

/**
 * Walks a cutting file from its own text, read by a reader of another hand: every seam, stretch between notches and girth, every
 * cutting line against its stitching line, and their lengths against what the draft was found to be, to 0.1 mm; every polyline against
 * the curves that it was drawn for, in place and direction; the unit and the test squares; no piece on another. Of several sizes each is walked. Issues are all that is wrong with the file; none of them is the draft's.
 */
export function walkCuttingFile(all: readonly ToBeCut[], text: string, flavour: Flavour): readonly Issue[] {
  let read: ReadCuttingFile;
  try {
    read = readBlocks(text);
  } catch (error) {
    return [damaged(error)];
  }
  return [
    ...scaleFaults(read),
    ...onEachOther(read),
    ...all.flatMap((one) => sizeFaults(one, read, flavour)),
  ];
}

function sizeFaults(
  { garment, report, blocks }: ToBeCut,
  read: ReadCuttingFile,
  flavour: Flavour,
): readonly Issue[] {
  try {
    const pieces = garment.pieces.map((piece, i) => {
      const block = read.blocks.get(blocks[i]?.name ?? '');
      if (!block) throw new Error(`it holds no block for ${piece.name}`);
      return pieceAsCut(piece, block, flavour);
    });
    const drawn = { ...garment, pieces: pieces.map((piece) => piece.drawn) };
    const whole = { ...garment, pieces: pieces.map((piece) => piece.whole) };
    const cut = new Map(
      pieces.map((piece): [string, Edge] => [piece.drawn.name, { name: 'cut', curves: piece.cut }]),
    );
    const walked = checkGarment(drawn, fileBounds);
    const known = new Set(report.issues.map(keyOf));
    const found = [
      ...walked.issues,
      ...cutReady(whole, cut, fileBounds.cutLine),
      ...pieces.flatMap((piece) => notchDepthFaults(piece.drawn, piece.notches, fileBounds.cutLine)),
    ].filter(
      (issue) =>
        issue.severity === 'error' &&
        !known.has(keyOf(issue)) &&
        !(flavour === 'polylines' && ofCurvesOnly.has(issue.code)),
    );
    return [
      ...found.map((issue): Issue => ({ ...issue, message: `In the cutting file: ${issue.message}` })),
      ...unlike(report, walked),
      ...blocks.flatMap((block) => followFaults(block, read.blocks.get(block.name))),
    ];
  } catch (error) {
    return [damaged(error)];
  }
}

const keyOf = ({ code, path }: Issue): string => JSON.stringify([code, path]);

/** Lengths and girths that are others in the file than in the draft. */
function unlike(drafted: Report, walked: Report): readonly Issue[] {
  const sides = drafted.seams.flatMap(({ name, lengthA, lengthB }, i) => {
    const there = walked.seams[i];
    return [
      { what: `the seam "${name}"`, was: lengthA, is: there?.lengthA },
      { what: `the seam "${name}"`, was: lengthB, is: there?.lengthB },
    ];
  });
  const girths = drafted.girths.map(({ level, finished }, i) => ({
    what: `the girth at the ${level}`,
    was: finished,
    is: walked.girths[i]?.finished,
  }));
  return [...sides, ...girths].flatMap(({ what, was, is = Number.NaN }): readonly Issue[] => {
    if (Math.abs(is - was) <= FILE) return [];
    return [
      {
        code: 'cutting-file-off',
        severity: 'error',
        path: what,
        message: `In the cutting file ${what} measures ${inMm(is)}, and in the draft ${inMm(was)}.`,
        value: is,
        limits: { min: was - FILE, max: was + FILE, unit: 'mm' },
      },
    ];
  });
}

function scaleFaults({ unit, beside }: ReadCuttingFile): readonly Issue[] {
  const drawn = beside.layers.get('TEST') ?? [];
  const wrong = squares.filter(({ side }, i) => {
    const curves = drawn[i]?.curves ?? [];
    if (curves.length !== 4) return true;
    const { left, right, top, bottom } = boundingBox(curves);
    return [right - left, bottom - top].some((size) => !(Math.abs(size - side) <= FILE));
  });
  return [
    ...(unit === MILLIMETRES ? [] : ['It does not say that its unit is the millimetre.']),
    ...wrong.map(({ text, side }) => `The test square of ${text} is not of ${fixedMm(side, 1)}.`),
  ].map((words) => ({
    code: 'test-square-wrong',
    severity: 'error',
    path: 'file',
    message: `In the cutting file: ${words}`,
  }));
}

/** Pieces inserted on one another. */
function onEachOther({ blocks, inserted }: ReadCuttingFile): readonly Issue[] {
  const placed = inserted.flatMap(({ name, at }) => {
    const there = movedBy(vectorBetween(point(0, 0), at));
    const curves = cutOf(blocks.get(name)).map((curve) => transformedCurve(curve, there));
    return curves.length > 0 ? [{ name, curves, box: boundingBox(curves) }] : [];
  });
  return placed.flatMap((a, i) =>
    placed
      .slice(i + 1)
      .filter((b) => boundsMeet(a.box, b.box))
      .flatMap((b) => overlapFaults(new Map([a, b].map((one) => [one.name, one]))))
      .map((issue) => ({ ...issue, message: `In the cutting file: ${issue.message}` })),
  );
}

const cutOf = (block: ReadBlock | undefined) =>
  (block?.layers.get('CUT') ?? []).flatMap(({ curves }) => curves);

const damaged = (error: unknown): Issue => ({
  code: 'cutting-file-damaged',
  severity: 'error',
  path: 'file',
  message: `The cutting file cannot be read back: ${messageOf(error)}.`,
});
