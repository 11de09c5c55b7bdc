import { flatMapped } from '../flat-mapped.ts';
import type { Outline } from '../geometry/curve.ts';
import { edgeEnd, edgeStart } from '../geometry/edge.ts';
import { contains } from '../geometry/inside.ts';
import { crossings, throughPoints } from '../geometry/intersect.ts';
import { outlineCurves, signedArea } from '../geometry/outline.ts';
import { distance } from '../geometry/point.ts';
import { COINCIDENCE } from '../geometry/tolerance.ts';
import type { Issue } from '../issue.ts';
import type { IssueCode } from '../issue-codes/issue-codes.ts';
import type { Piece } from '../pattern/piece.ts';
import { inMm } from '../text/figure.ts';

/**
 * Looks at a piece as a whole: its stitching line closes and runs clockwise, its grainline lies inside, folds
 * have no allowance and no allowance is less than nothing.
 */
export function outlineFaults(piece: Piece): Issue[] {
  if (piece.edges.length === 0 || piece.edges.some((edge) => edge.curves.length === 0)) {
    return [fault('outline-open', piece.name, `${piece.name} has an edge with nothing drawn in it.`)];
  }
  return [...gaps(piece), ...direction(piece), ...grainFaults(piece), ...allowanceFaults(piece)];
}

/** Whether an outline's curves follow one another and come back to where they began. */
export const isClosed = (outline: Outline): boolean => openings(outline).length === 0;

function openings(
  outline: Outline,
): { readonly before: string; readonly after: string; readonly gap: number }[] {
  return flatMapped(outline, (edge, i) => {
    const next = outline[(i + 1) % outline.length] ?? edge;
    const gap = distance(edgeEnd(edge), edgeStart(next));
    return gap <= COINCIDENCE ? [] : [{ before: edge.name, after: next.name, gap }];
  });
}

const gaps = (piece: Piece): Issue[] =>
  openings(piece.edges).map(({ before, after, gap }) =>
    fault(
      'outline-open',
      `${piece.name}/${before}`,
      `The stitching line of ${piece.name} is open by ${inMm(gap)} between "${before}" and "${after}".`,
      { value: gap, limits: { max: COINCIDENCE, unit: 'mm' } },
    ),
  );

const direction = (piece: Piece): Issue[] =>
  signedArea(piece.edges) > 0
    ? []
    : [
        fault(
          'outline-anticlockwise',
          piece.name,
          `The stitching line of ${piece.name} runs anticlockwise, so its allowance would be added inside.`,
        ),
      ];

function grainFaults(piece: Piece): Issue[] {
  const { from, to } = piece.grain;
  const length = distance(from, to);
  const leaves = outlineCurves(piece.edges).some((curve) =>
    crossings(curve, throughPoints(from, to)).some(({ along }) => along >= 0 && along <= length),
  );
  if (length > COINCIDENCE && !leaves && contains(piece.edges, from)) return [];
  return [
    fault('grainline-outside', piece.name, `The grainline of ${piece.name} does not lie inside the piece.`),
  ];
}

const allowanceFaults = (piece: Piece): Issue[] =>
  flatMapped(piece.edges, (edge) => {
    const path = `${piece.name}/${edge.name}`;
    const limits = { min: 0, unit: 'mm' };
    const value = edge.allowance;
    if (!(value >= 0)) {
      const message = `The edge "${edge.name}" of ${piece.name} has an allowance of less than nothing.`;
      return [fault('allowance-impossible', path, message, { value, limits })];
    }
    if (edge.turn === 'fold' && value > 0) {
      const message = `The edge "${edge.name}" of ${piece.name} lies on a fold and takes no allowance, but has ${inMm(value)}.`;
      return [fault('allowance-on-fold', path, message, { value, limits: { ...limits, max: 0 } })];
    }
    return [];
  });

const fault = (code: IssueCode, path: string, message: string, rest: Partial<Issue> = {}): Issue => ({
  code,
  severity: 'error',
  path,
  message,
  ...rest,
});
