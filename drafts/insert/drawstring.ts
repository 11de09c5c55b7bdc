import type { Body } from '../../engine/body/body.ts';
import { drawstringIssue } from '../../engine/body/child.ts';
import type { Solution } from '../../engine/constraints/solution.ts';
import type { Result } from '../../engine/issue.ts';
import type { Garment, Notion } from '../../engine/pattern/garment.ts';
import { solvedPoint } from '../piece-edges.ts';
import type { InsertStyling } from './choices.ts';
import type { InsertLines } from './insert-lines.ts';
import { insertRules as rules } from './rules.ts';

/** Draws unless a drawstring is asked for at the neck of a child, where safety standards forbid it. */
export function withDrawstringAllowed(
  body: Body,
  styling: InsertStyling,
  draw: () => Result<Garment>,
): Result<Garment> {
  const issue = styling.necklineGathers === 'drawstring' ? drawstringIssue(body) : undefined;
  return issue ? { ok: false, issues: [issue] } : draw();
}

/** The interfacing that is ironed behind the buttonholes, and the tape that holds a neckline gathered for good. */
export const holeInterfacing = 'interfacing behind the buttonholes';
export const necklineTape = 'tape for the gathered neckline';

/**
 * Two cords, one threaded from each side, and what is ironed behind the holes they come out of; or a tape where the
 * neckline is gathered for good.
 */
export function drawstringNotions(
  lines: InsertLines,
  solution: Solution,
  styling: InsertStyling,
): readonly Notion[] {
  if (styling.necklineGathers === 'fixed') {
    const note = 'narrow, stitched over the gathering rows inside';
    return [{ name: necklineTape, count: 1, length: 2 * lines.place.neckline.value, note }];
  }
  const half = solvedPoint(solution, lines.top).x;
  return [
    {
      name: 'drawstring',
      count: 2,
      length: half + rules.cordEnd.value,
      note: 'sewn fast in the end of the casing, out of its buttonhole beside centre front',
    },
    {
      name: holeInterfacing,
      count: 2,
      length: rules.holePatch.value,
      note: 'square patches, to be ironed on',
      got: 'off interfacing',
    },
  ];
}
