import { isSimple } from '../geometry/inside.ts';
import { outlineBounds, signedArea } from '../geometry/outline.ts';
import type { Result } from '../issue.ts';
import type { TracedEdge } from '../shaping/traced.ts';
import { fixed, fixedMm } from '../text/figure.ts';
import { refusedFile } from './file-issues.ts';

/** No piece of pattern is smaller (mm^2) or larger (mm), and none takes so many curves to draw. */
const LEAST_AREA = 400;
const LARGEST = 5_000;
export const MOST_CURVES = 3_000;

/**
 * What makes an outline, in mm, no piece of pattern: `outline-too-large`, `outline-too-detailed`, `outline-crosses`,
 * `outline-too-small`; nothing where it is one.
 */
export function outlineFault(
  edges: readonly TracedEdge[],
): Extract<Result<never>, { ok: false }> | undefined {
  const { left, right, top, bottom } = outlineBounds(edges);
  const size = `${fixed(right - left, 0)} by ${fixedMm(bottom - top, 0)}`;
  if (Math.max(right - left, bottom - top) > LARGEST)
    return refusedFile(
      'outline-too-large',
      `At this scale the piece measures ${size}. Look at the scale again.`,
    );
  if (edges.reduce((sum, { curves }) => sum + curves.length, 0) > MOST_CURVES) return tooDetailed;
  if (!isSimple(edges)) return refusedFile('outline-crosses', 'The outline crosses or touches itself.');
  return signedArea(edges) >= LEAST_AREA
    ? undefined
    : refusedFile('outline-too-small', `At this scale the outline encloses next to nothing (${size}).`);
}

/** An outline of more lines and curves than any piece takes. */
export const tooDetailed = refusedFile(
  'outline-too-detailed',
  `The outline is drawn with more than ${MOST_CURVES} lines and curves; simplify it first.`,
);
