import type { Issue } from '../issue.ts';
import type { IssueCode } from '../issue-codes/issue-codes.ts';
import { rounded } from '../text/figure.ts';
import { doubledArea, type LayProblem } from './problem.ts';
import { crossesItself } from './proof.ts';
import { breadthOf, hasSeat } from './room.ts';

/** Why shapes cannot be laid: an outline without area or that crosses itself, a shape too broad for the strip or its repeat, none at all. */
export function refusedShapes(problem: LayProblem): Issue[] {
  const { shapes, width, repeatAcross = 0 } = problem;
  const refused: Issue[] = shapes.flatMap((shape): Issue[] => {
    const { name, outline, ways, count } = shape;
    const error = (code: IssueCode, message: string): Issue[] => [
      { code, severity: 'error', path: name, message },
    ];
    if (count === 0) return [];
    if (outline.length < 3 || doubledArea(outline) === 0)
      return error('shape-empty', `The shape “${name}” has no area.`);
    if (crossesItself(outline)) return error('shape-crossed', `The outline of “${name}” crosses itself.`);
    const least = breadthOf({ outline, ways });
    if (least > width)
      return [
        {
          code: 'shape-too-broad',
          severity: 'error',
          path: name,
          message: `“${name}” is ${rounded(least, 1)} mm across the grain, and the cloth is only ${rounded(width, 1)} mm wide for it.`,
          value: least,
          limits: { max: width, unit: 'mm' },
        },
      ];
    if (!ways.some((way) => hasSeat(problem, shape, way)))
      return [
        {
          code: 'shape-off-stripe',
          severity: 'error',
          path: name,
          message: `“${name}” has no room on the cloth, ${rounded(width, 1)} mm wide for it, where its stripes would meet, ${rounded(repeatAcross, 1)} mm apart.`,
          value: least,
          limits: { max: width, unit: 'mm' },
        },
      ];
    return [];
  });
  if (shapes.every(({ count }) => count === 0))
    refused.push({
      code: 'nothing-to-lay',
      severity: 'error',
      path: '',
      message: 'There is nothing to lay.',
    });
  return refused;
}

/** How wide a strip must be so that each shape has room on it in some way. */
export const broadest = ({ shapes }: Pick<LayProblem, 'shapes'>): number =>
  Math.max(0, ...shapes.filter(({ count }) => count > 0).map(breadthOf));
