import { edgeLength, edgeOf } from '../../engine/geometry/edge.ts';
import { claimAbout } from '../../engine/pattern/band-table.ts';
import type { EdgeRef } from '../../engine/pattern/seam.ts';
import type { LengthPart, ShapeClaim } from '../../engine/pattern/shape.ts';
import { halves } from '../bodice/armhole-chains.ts';
import { edgesOn } from '../bodice/armhole-parts.ts';
import { easedLine } from '../bodice/eased-line.ts';
import type { PanelCut } from '../bodice/panel-cut.ts';
import { strapBands as bands } from './bands.ts';

/** Each edge of the straps is as long as its path over the shoulder, as back and front lie together there. */
export function strapShapes({ plan, armholes }: PanelCut): readonly ShapeClaim[] {
  const inner = halves.reduce((sum, half) => {
    const { inner: from, sideCorner, neckHeading } = plan.lines[half];
    return sum + edgeLength(edgeOf('inner', [easedLine(from, sideCorner, neckHeading)]));
  }, 0);
  const outer = halves.reduce(
    (sum, half) =>
      sum +
      edgesOn(armholes[half], `${half} strap`).reduce(
        (length, { curves }) => length + edgeLength(edgeOf('outer', curves)),
        0,
      ),
    0,
  );
  const along = (edges: readonly EdgeRef[]): readonly LengthPart[] =>
    edges.map(({ piece, edge }) => ({ kind: 'edge', piece, edge, times: 1 }));
  const onPath = (which: string, edges: readonly EdgeRef[], path: number): ShapeClaim =>
    claimAbout(
      bands.path,
      path,
      { kind: 'length', parts: along(edges) },
      'the strap does not lie flat over the shoulder',
      `strap, ${which} edge on its path`,
    );
  return [
    onPath(
      'inner',
      halves.map((half) => ({ piece: `${half} strap`, edge: 'inner' })),
      inner,
    ),
    onPath(
      'outer',
      halves.flatMap((half) => edgesOn(armholes[half], `${half} strap`)),
      outer,
    ),
  ];
}
