import type { Spatial } from '../../geometry/space.ts';
import { carry } from '../carried.ts';
import type { SewnPanel } from '../sewn.ts';
import type { Worn } from '../worn.ts';

/** From place to place along a grain line, mm. */
const STEP = 8;

/** A grain line as it lies on the worn cloth, from its lower end. */
export interface GrainLine {
  readonly piece: string;
  readonly points: readonly Spatial[];
}

/** The grain lines that are drawn on the pieces, on each panel of a worn garment; of one cut on a fold, on its left half. */
export const grainLines = ({ sewn, x }: Worn): readonly GrainLine[] =>
  sewn.panels.map((panel): GrainLine => ({ piece: panelTitle(panel), points: grainOf(panel, x) }));

function grainOf(sewnPanel: SewnPanel, x: Float64Array): readonly Spatial[] {
  const { from, to } = sewnPanel.panel.piece.grain;
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const parts = Math.max(1, Math.ceil(length / STEP));
  return Array.from({ length: parts + 1 }, (_, i): Spatial => {
    const t = i / parts;
    const place = new Float64Array(3);
    carry(sewnPanel, x, from.x + t * (to.x - from.x), from.y + t * (to.y - from.y), place, 0);
    return [place[0] as number, place[1] as number, place[2] as number];
  });
}

/** What a panel is called: on which side it is worn, and the name of its piece. */
export const panelTitle = ({ panel: { name, side } }: SewnPanel): string =>
  side === 'whole' ? name : `${side} ${name}`;
