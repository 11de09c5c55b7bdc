import { claim } from '../../engine/pattern/band-table.ts';
import type { GirthPart } from '../../engine/pattern/seam.ts';
import type { ShapeClaim } from '../../engine/pattern/shape.ts';
import { skirtBands as bands } from './bands.ts';
import type { GoreName } from './by-gore.ts';

const hip = (gore: GoreName, times: number): GirthPart => ({
  kind: 'line',
  piece: `skirt ${gore}`,
  line: 'hip level',
  times,
});

/** What a cutter looks at on the gores of a skirt, measured as they are written. */
export const skirtShapes: readonly ShapeClaim[] = [
  claim(
    bands.balance,
    {
      kind: 'length',
      parts: [hip('centre front', 1), hip('side front', 1), hip('side back', -1), hip('centre back', -1)],
    },
    'worn, the side seam lies too far back at the hip when it is more, too far forward when it is less',
  ),
];
