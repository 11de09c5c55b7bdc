import { edgeLength, edgeOf, pointAlong } from '../geometry/edge.ts';
import type { GirthPart } from '../pattern/seam.ts';
import { carry } from './carried.ts';
import type { Worn } from './worn.ts';

/** Places along a drawn level are looked at so far apart, mm. */
const APART = 10;

/**
 * The height at which a level of the garment hangs, mm: the mean along its lines and edges as they are drawn on the pieces, for
 * they may lie lower in front than at the side. None where none of its pieces is worn.
 */
export function levelAsHung(parts: readonly GirthPart[], { sewn, x }: Worn): number | undefined {
  let sum = 0;
  let count = 0;
  for (const part of parts)
    for (const panel of sewn.panels) {
      const { piece } = panel.panel;
      if (panel.panel.name !== part.piece || panel.panel.side === 'right') continue;
      const curves =
        part.kind === 'edge'
          ? piece.edges.find(({ name }) => name === part.edge)?.curves
          : piece.lines.find(({ name }) => name === part.line)?.curves;
      if (!curves) continue;
      const drawn = edgeOf(part.piece, curves);
      const length = edgeLength(drawn);
      const steps = Math.ceil(length / APART);
      for (let step = 0; step < steps; step++) {
        const { point } = pointAlong(drawn, ((step + 0.5) * length) / steps);
        const place = new Float64Array(3);
        carry(panel, x, point.x, point.y, place, 0);
        sum += place[1] as number;
        count++;
      }
    }
  return count > 0 ? sum / count : undefined;
}
