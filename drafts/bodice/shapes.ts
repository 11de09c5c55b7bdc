import type { EdgeRef } from '../../engine/pattern/garment.ts';
import type { ShapeClaim } from '../../engine/pattern/shape.ts';
import type { PanelCut } from './panel-cut.ts';

/** The tightest that an armhole may bend, mm. */
const TIGHTEST = 25;

/** What a cutter looks at in the panels, measured on the written pieces. */
export const bodiceShapes = ({ armholes }: PanelCut): readonly ShapeClaim[] =>
  (['front', 'back'] as const).map((part) => ({
    kind: 'tightest bend',
    name: `${part} armhole, tightest bend`,
    of: {
      edges: armholes[part].edges
        .toReversed()
        .map(({ piece, edge }): EdgeRef => ({ piece, edge, reversed: true })),
    },
    low: TIGHTEST,
    bound: true,
    outside: 'its allowance cannot be turned without cutting into it, and gathers crowd there',
  }));
