import type { Solution } from '../../engine/constraints/solution.ts';
import type { Curve, Edge } from '../../engine/geometry/curve.ts';
import { edgeLength, splitEdgeAt } from '../../engine/geometry/edge.ts';
import { edgeCrossings } from '../../engine/geometry/intersect.ts';
import { between, distance, moved, type Point, point, vectorBetween } from '../../engine/geometry/point.ts';
import { reversed } from '../../engine/geometry/split.ts';
import { mirroredIn, transformedCurve } from '../../engine/geometry/transform.ts';
import { scaled, unit, vector } from '../../engine/geometry/vector.ts';
import type { Mark, Piece, PieceEdge } from '../../engine/pattern/piece.ts';
import { gatheringRows } from '../gathering-rows.ts';
import { grainThrough } from '../grainline.ts';
import {
  crossMark,
  cutOnFold,
  levelLine,
  seamEdge,
  solvedCurves,
  solvedPoint,
  straight,
} from '../piece-edges.ts';
import { sewingRank } from '../sewing-rank.ts';
import type { InsertStyling } from './choices.ts';
import type { InsertLines } from './insert-lines.ts';
import { insertRules as rules } from './rules.ts';

/** What the insert is told about the seam its side is sewn to. */
export interface InsertSeam {
  /** Down the side from the neckline to the bust level, mm. */
  readonly toBust: number;
  readonly allowance: number;
  readonly bustText: string;
  /** How far inside the finished seam the bust point lies at the bust level, mm; less than nothing where it lies outside. */
  readonly bustPointInside: number;
}

/**
 * Cuts the insert, both halves in one, double on a fold at the neckline. It is drawn as seen from outside: what is on
 * the right of the paper is her left.
 */
export function insertPiece(
  lines: InsertLines,
  solution: Solution,
  styling: InsertStyling,
  seam: InsertSeam,
): Piece {
  const flip = mirroredIn(point(0, 0), point(0, 1));
  const mirror = (curves: readonly Curve[]): readonly Curve[] =>
    curves.toReversed().map((curve) => reversed(transformedCurve(curve, flip)));
  const top = solvedPoint(solution, lines.top);
  const foot = solvedPoint(solution, lines.foot);
  const leftSide = solvedCurves(solution, [lines.side]);
  const bottomHalf = solvedCurves(solution, [lines.bottom]);
  const sideLength = distance(top, foot);
  const atBust = between(top, foot, seam.toBust / sideLength);
  const [leftEnd, gatheredHalf] = splitEdgeAt({ name: 'bottom', curves: bottomHalf }, rules.flatEnds.value, [
    'bottom left end',
    'bottom',
  ]);
  const bottom = (name: string, curves: readonly Curve[], inflections = 0) =>
    seamEdge(name, curves, seam.allowance, sewingRank.underBust, inflections);
  const side = (name: string, curves: readonly Curve[]) =>
    seamEdge(name, curves, seam.allowance, sewingRank.princess);
  const edges: readonly PieceEdge[] = [
    {
      name: 'neckline',
      curves: straight(flip(top), top),
      turn: 'fold',
      allowance: 0,
      rank: sewingRank.fold,
      inflections: 0,
    },
    side('left side', leftSide),
    bottom('bottom left end', leftEnd.curves),
    bottom('bottom', [...gatheredHalf.curves, ...mirror(gatheredHalf.curves)], 2),
    bottom('bottom right end', mirror(leftEnd.curves)),
    side('right side', mirror(leftSide)),
  ];
  const middle = point(Math.min(top.x, foot.x) / 2, styling.casingDepth + 1);
  return {
    name: 'insert',
    number: 3,
    edges,
    grain: grainThrough(edges, middle, vector(0, 1)),
    notches: notchesAlong(sideLength, seam.toBust, edgeLength(gatheredHalf)),
    lines: [
      {
        ...levelLine('bust', flip(atBust), atBust, seam.bustText),
        fullness: 2 * fullnessAtBust(lines, top, foot, seam.toBust),
      },
      ...casing(styling, top, foot, flip),
      ...gatheringRows('bottom', [...gatheredHalf.curves, ...mirror(gatheredHalf.curves)]),
      ...(styling.slashLinesDrawn === 'yes'
        ? slashLines(styling, top, foot, { name: 'bottom', curves: bottomHalf }, flip)
        : []),
    ],
    marks: [...(drawn(styling) ? buttonholes(styling) : []), ...bustPoints(lines, seam, atBust, flip)],
    cut: cutOnFold('self'),
  };
}

/** The match points of both sides and the bottom: `toBust` down each side, and so far along the gathers to the middle (mm). */
const notchesAlong = (sideLength: number, toBust: number, toCentre: number): Piece['notches'] => [
  { name: 'neckline fold', edge: 'left side', at: 0, mark: 'fold' },
  { name: 'neckline fold', edge: 'right side', at: sideLength, mark: 'fold' },
  { name: 'bust level', edge: 'left side', at: toBust, mark: 'single' },
  { name: 'bust level', edge: 'right side', at: sideLength - toBust, mark: 'single' },
  { name: 'under-bust seam', edge: 'left side', at: sideLength, mark: 'single' },
  { name: 'under-bust seam', edge: 'right side', at: 0, mark: 'single' },
  { name: 'centre front', edge: 'bottom', at: toCentre, mark: 'single' },
  { name: 'left end of gathers', edge: 'bottom left end', at: rules.flatEnds.value, mark: 'gather' },
  { name: 'right end of gathers', edge: 'bottom right end', at: 0, mark: 'gather' },
];

const drawn = (styling: InsertStyling): boolean => styling.necklineGathers === 'drawstring';

/**
 * What a half was spread by at the bust level, mm. Before spreading, the side ran straight from the neckline
 * corner through the princess line's place at bust level; between top and foot the spread changes in proportion.
 */
function fullnessAtBust({ place }: InsertLines, top: Point, foot: Point, toBust: number): number {
  const [neckline, bust] = [place.neckline.value, place.bust.value];
  const share = toBust / distance(top, foot);
  const plainFoot = neckline + (bust - neckline) / share;
  const spreadAtTop = top.x - neckline;
  const spreadAtFoot = foot.x - plainFoot;
  return spreadAtTop + share * (spreadAtFoot - spreadAtTop);
}

/** The stitching of the casing, or two gathering rows where the neckline is gathered for good. */
function casing(styling: InsertStyling, top: Point, foot: Point, flip: (p: Point) => Point): Piece['lines'] {
  const across = (depth: number) => {
    const end = between(top, foot, depth / (foot.y - top.y));
    return straight(flip(end), end);
  };
  const depth = styling.casingDepth;
  return drawn(styling)
    ? [{ name: 'casing', kind: 'casing', curves: across(depth) }]
    : [
        { name: 'neckline, gathering row 1', kind: 'gathering', curves: across(depth / 2) },
        { name: 'neckline, gathering row 2', kind: 'gathering', curves: across(depth) },
      ];
}

/** Slash lines are drawn down to this far above the bottom, clear of the gathering rows, mm. */
const ABOVE_BOTTOM = 16;

/** Where each half was slashed: lines that share out top and foot evenly. */
function slashLines(
  styling: InsertStyling,
  top: Point,
  foot: Point,
  bottomHalf: Edge,
  flip: (p: Point) => Point,
): Piece['lines'] {
  const count = styling.slashLines;
  return Array.from({ length: count }, (_, i) => {
    const share = (i + 1) / (count + 1);
    const from = point(top.x * share, top.y);
    const down = unit(vectorBetween(from, point(foot.x * share, foot.y)));
    const [crossing] = edgeCrossings(bottomHalf, { through: from, heading: down });
    const length = (crossing?.along ?? foot.y) - ABOVE_BOTTOM;
    const to = moved(from, scaled(down, length));
    return [
      { name: `left slash line ${i + 1}`, kind: 'slash' as const, curves: straight(from, to) },
      { name: `right slash line ${i + 1}`, kind: 'slash' as const, curves: straight(flip(from), flip(to)) },
    ];
  }).flat();
}

/** Where her bust points come to lie once the fullness is shared out evenly; none where they lie beyond the seams. */
function bustPoints(
  { place }: InsertLines,
  { bustPointInside }: InsertSeam,
  atBust: Point,
  flip: (p: Point) => Point,
): readonly Mark[] {
  if (bustPointInside < 0) return [];
  const left = between(point(0, atBust.y), atBust, 1 - bustPointInside / place.bust.value);
  return [crossMark('right bust point', flip(left)), crossMark('left bust point', left)];
}

/** Two buttonholes in the outer layer, through which the drawstrings come out either side of centre front. */
function buttonholes(styling: InsertStyling): readonly Mark[] {
  const hole = (name: string, x: number): Mark => ({
    name,
    kind: 'buttonhole',
    at: point(x, styling.casingDepth / 2),
    angle: Math.PI / 2,
    length: Math.min(rules.buttonholeLength.value, styling.casingDepth - 2 * rules.holeInCasing.value),
  });
  const x = rules.buttonholeFromCentre.value;
  return [hole('right buttonhole', -x), hole('left buttonhole', x)];
}
