import type { Issue } from '../issue.ts';
import type { IssueCode } from '../issue-codes/issue-codes.ts';
import { rounded } from '../text/figure.ts';
import { doubledArea, inWay, type LayProblem, type LayShape } from './problem.ts';
import { crossesItself } from './proof.ts';

/** Why shapes cannot be laid: an outline without area or that crosses itself, a shape too broad for the strip, none at all. */
export function refusedShapes({ shapes, width }: LayProblem): Issue[] {
  const refused: Issue[] = shapes.flatMap(({ name, outline, ways, count }): Issue[] => {
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
          message: `“${name}” is ${rounded(least, 1)} across the grain, and the cloth is only ${rounded(width, 1)} wide for it.`,
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

/** How broad a shape is across the strip in its narrowest way. */
const breadthOf = ({ outline, ways }: Pick<LayShape, 'outline' | 'ways'>): number =>
  Math.min(
    ...ways.map((way) => {
      const ys = outline.map((corner) => inWay(corner, way).y);
      return Math.max(...ys) - Math.min(...ys);
    }),
  );

/** How wide a strip must be so that each shape has room on it in some way. */
export const broadest = ({ shapes }: Pick<LayProblem, 'shapes'>): number =>
  Math.max(0, ...shapes.filter(({ count }) => count > 0).map(breadthOf));
