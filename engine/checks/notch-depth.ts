import { footOf } from '../finishing/notch-place.ts';
import { NOTCH_DEPTH, type NotchStrokes, notchDepth } from '../finishing/notches.ts';
import { distance } from '../geometry/point.ts';
import type { Issue } from '../issue.ts';
import type { Piece } from '../pattern/piece.ts';
import { inMm } from '../text/figure.ts';

/**
 * Measures how deep every notch of a piece cuts into its allowance, from the strokes that are drawn for it: 4 mm at most,
 * and never over half the allowance, so that the seam keeps its strength and its room to let out.
 */
export const notchDepthFaults = (
  piece: Piece,
  notches: readonly NotchStrokes[],
  bound: number,
): readonly Issue[] =>
  notches.flatMap(({ notch, strokes }): readonly Issue[] => {
    const edge = piece.edges.find(({ name }) => name === notch.edge);
    // On an edge without allowance the notch is marked on the cloth, not cut.
    if (!edge || edge.allowance === 0) return [];
    const left = Math.min(
      ...strokes.flatMap((stroke) => {
        const foot = footOf(edge, stroke, notch.at).point;
        return stroke.flatMap(({ from, to }) => [distance(foot, from), distance(foot, to)]);
      }),
    );
    const deep = edge.allowance - left;
    const most = notchDepth(edge.allowance);
    if (deep <= most + bound) return [];
    return [
      {
        code: 'notch-too-deep',
        severity: 'error',
        path: `${piece.name}/${notch.edge}`,
        message:
          `The notch "${notch.name}" of ${piece.name} is cut ${inMm(deep)} into an allowance of ` +
          `${inMm(edge.allowance)}: it may be ${inMm(NOTCH_DEPTH)} deep, and never over half the allowance.`,
        value: deep,
        limits: { max: most, unit: 'mm' },
      },
    ];
  });
