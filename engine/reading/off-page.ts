import type { Rectangle } from '../finishing/rectangle.ts';
import { type Bounds, boundingBox } from '../geometry/bounds.ts';
import type { Edge } from '../geometry/curve.ts';
import { FILE } from '../geometry/tolerance.ts';
import type { Issue } from '../issue.ts';

/**
 * What of a sheet lies outside its page, where no printer shows it, and words too small to be read; `page` is as large as the
 * paper, mm, from its top left corner. One issue a piece, and one for all labels.
 */
export function offPage(
  page: { readonly width: number; readonly height: number },
  cutLines: ReadonlyMap<string, Edge>,
  labels: readonly Rectangle[],
): readonly Issue[] {
  const isOff = ({ left, right, top, bottom }: Bounds): boolean =>
    left < -FILE || top < -FILE || right > page.width + FILE || bottom > page.height + FILE;
  const lost = labels.some(
    ({ middle, width, height }) =>
      !(Math.min(width, height) > LEAST) ||
      isOff({
        left: middle.x - width / 2,
        right: middle.x + width / 2,
        top: middle.y - height / 2,
        bottom: middle.y + height / 2,
      }),
  );
  return [
    ...[...cutLines].flatMap(([name, { curves }]) =>
      curves.length > 0 && isOff(boundingBox(curves))
        ? [fault(name, `${name} lies partly off the page.`)]
        : [],
    ),
    ...(lost ? [fault('file', 'A label lies off the page, or is too small to be read.')] : []),
  ];
}

/** Capitals lower than this are no letters, mm; the smallest that are written are 1.1. */
const LEAST = 0.5;

const fault = (path: string, message: string): Issue => ({
  code: 'off-page',
  severity: 'error',
  path,
  message,
});
