import type { Body } from '../../engine/body/body.ts';
import { claim } from '../../engine/pattern/band-table.ts';
import type { ShapeClaim } from '../../engine/pattern/shape.ts';
import { skirtBands as bands } from './bands.ts';
import type { GoreSizes } from './gore-sizes.ts';

/** What a pattern cutter looks at in a gored skirt. */
export const skirtFigures = (body: Body, sizes: GoreSizes): readonly ShapeClaim[] => [
  claim(
    bands.hip,
    { kind: 'drafted', piece: 'skirt centre front', value: sizes.hipEase, unit: 'mm' },
    'as chosen',
  ),
  claim(
    bands.sweep,
    { kind: 'drafted', piece: 'skirt centre front', value: sizes.sweep.value, unit: 'mm' },
    'as chosen, or a body larger or smaller than the regular adult',
  ),
  claim(
    bands.rise,
    {
      kind: 'drafted',
      piece: 'skirt centre front',
      value: sizes.toHip.side.value - sizes.toHip['centre front'].value,
      unit: 'mm',
    },
    `hip less waist is ${Math.round(body.size.hipGirth - body.size.waistGirth)} mm`,
  ),
];
