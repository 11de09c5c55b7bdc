import { inWay, type LayProblem, type LayShape, phaseIn, type Way } from './problem.ts';

/** How far a shape reaches across the strip in one of its ways, from its origin. */
function reachAcross(
  { outline }: Pick<LayShape, 'outline'>,
  way: Way,
): { readonly top: number; readonly low: number } {
  const ys = outline.map((corner) => inWay(corner, way).y);
  return { top: Math.min(...ys), low: Math.max(...ys) };
}

/** How broad a shape is across the strip in its narrowest way. */
export const breadthOf = (shape: Pick<LayShape, 'outline' | 'ways'>): number =>
  Math.min(
    ...shape.ways.map((way) => {
      const { top, low } = reachAcross(shape, way);
      return low - top;
    }),
  );

/** Whether a shape that is no broader than the strip lies inside it in this way on some repeat across it. */
export function hasSeat(
  { width, repeatAcross = 0 }: Omit<LayProblem, 'shapes'>,
  shape: Omit<LayShape, 'ways'>,
  way: Way,
): boolean {
  if (repeatAcross === 0 || shape.onFold) return true;
  const { top, low } = reachAcross(shape, way);
  const phase = phaseIn(shape, way);
  return Math.ceil((-top - phase) / repeatAcross) <= Math.floor((width - low - phase) / repeatAcross);
}
