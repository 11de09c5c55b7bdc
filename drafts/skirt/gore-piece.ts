import type { Solution } from '../../engine/constraints/solution.ts';
import { edgeLength } from '../../engine/geometry/edge.ts';
import { point } from '../../engine/geometry/point.ts';
import type { Notch, Piece, PieceEdge } from '../../engine/pattern/piece.ts';
import type { Allowances } from '../allowances.ts';
import { grainline } from '../grainline.ts';
import { cutOnFold, cutPair, seamEdge, solvedCurves, solvedPoint, straight } from '../piece-edges.ts';
import { sewingRank } from '../sewing-rank.ts';
import type { GoreSeam } from './by-gore.ts';
import type { GoreLines } from './gore-lines.ts';

/** How a gore is finished: its seams by name, left and right as drawn, and what is written on it. */
export interface GoreFinish {
  readonly name: string;
  readonly number: number;
  readonly left: GoreSeam;
  readonly right: GoreSeam;
  readonly allowance: Allowances;
  /** What is turned up at the hem, mm. */
  readonly hem: number;
  readonly hipText: string;
}

const rankOf: Readonly<Record<GoreSeam, number>> = {
  'centre front': sewingRank.fold,
  'front princess': sewingRank.princess,
  side: sewingRank.side,
  'back princess': sewingRank.princess,
  'centre back': sewingRank.centreBack,
};

/** Single notches in front, double ones towards the back (common practice, no source). */
const hipMark: Readonly<Record<GoreSeam, Notch['mark']>> = {
  'centre front': 'fold',
  'front princess': 'single',
  side: 'level',
  'back princess': 'double',
  'centre back': 'level',
};

/** The allowance of a gore's seam, mm. */
const allowanceOf = (name: GoreSeam, { seam, side, centreBack }: Allowances): number =>
  name === 'side' ? side : name === 'centre back' ? centreBack : seam;

/** Cuts a gore from the solved sketch. */
export function gorePiece(lines: GoreLines, solution: Solution, finish: GoreFinish): Piece {
  const { hipLeft, hipRight, hemLeft, hemRight, turn } = lines;
  const onFold = finish.left === 'centre front';
  const seam = (name: GoreSeam, curves: PieceEdge['curves']): PieceEdge =>
    seamEdge(name, curves, allowanceOf(name, finish.allowance), rankOf[name], 1);
  const rightUpper = [...solvedCurves(solution, [lines.right]), ...turn.right];
  const right = seam(finish.right, [...rightUpper, ...straight(hipRight, hemRight)]);
  const waistLeft = solvedPoint(solution, lines.waistLeft);
  const left =
    lines.left === undefined
      ? seam(finish.left, straight(hemLeft, waistLeft))
      : seam(finish.left, [
          ...straight(hemLeft, hipLeft),
          ...turn.left,
          ...solvedCurves(solution, [lines.left]),
        ]);
  const waist = seamEdge(
    'waist',
    solvedCurves(solution, [lines.waist]),
    finish.allowance.seam,
    sewingRank.waist,
    1,
  );
  const middle = (hipLeft.x + hipRight.x) / 2;
  return {
    name: finish.name,
    number: finish.number,
    edges: [
      waist,
      right,
      {
        name: 'hem',
        curves: lines.hem,
        turn: 'hem',
        allowance: finish.hem,
        rank: sewingRank.hem,
        inflections: 0,
      },
      onFold ? { ...left, turn: 'fold', allowance: 0 } : left,
    ],
    grain: grainline(point(middle, 0), point(middle, hemRight.y)),
    notches: [
      ...hipNotches(lines, finish, edgeLength({ name: 'to hip', curves: rightUpper }), left),
      ...(onFold ? foldNotches(edgeLength({ name: 'hem', curves: lines.hem })) : []),
    ],
    lines: [{ name: 'hip level', kind: 'level', curves: lines.hip, girth: 'hip', text: finish.hipText }],
    marks: [],
    cut: onFold ? cutOnFold('self') : cutPair('self'),
  };
}

/** The hip on both seams of a gore: so far down its right one (mm), and up its left one where that bends at the hip. */
const hipNotches = (
  lines: GoreLines,
  finish: GoreFinish,
  toHip: number,
  left: PieceEdge,
): Piece['notches'] => [
  { name: 'hip level', edge: finish.right, at: toHip, mark: hipMark[finish.right] },
  ...(lines.left === undefined
    ? []
    : [
        {
          name: 'hip level',
          edge: left.name,
          at: edgeLength({ name: 'left below the hip', curves: left.curves.slice(0, 1) }),
          mark: hipMark[finish.left],
        },
      ]),
];

/** The middle of a gore that is cut on the fold, at the waist and at the end of its hem (mm). */
const foldNotches = (hem: number): Piece['notches'] => [
  { name: 'centre front', edge: 'waist', at: 0, mark: 'fold' },
  { name: 'centre front', edge: 'hem', at: hem, mark: 'fold' },
];
