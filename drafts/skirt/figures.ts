import type { Body } from '../../engine/body/body.ts';
import type { ShapeClaim } from '../../engine/pattern/shape.ts';
import type { GoreSizes } from './gore-sizes.ts';

/** What a pattern cutter looks at in a gored skirt. */
export const skirtFigures = (body: Body, sizes: GoreSizes): readonly ShapeClaim[] => [
  {
    kind: 'drafted',
    piece: 'skirt centre front',
    name: 'skirt at hip level beyond the body',
    value: sizes.hipEase,
    unit: 'mm',
    low: 50,
    high: 400,
    outside: 'as chosen',
  },
  {
    kind: 'drafted',
    piece: 'skirt centre front',
    name: 'hem sweep',
    value: sizes.sweep.value,
    unit: 'mm',
    low: 1600,
    high: 3200,
    outside: 'as chosen, or a body larger or smaller than the regular adult',
  },
  {
    kind: 'drafted',
    piece: 'skirt centre front',
    name: 'skirt waist rises from centre front to side',
    value: sizes.toHip.side.value - sizes.toHip['centre front'].value,
    unit: 'mm',
    low: 6,
    high: 20,
    outside: `hip less waist is ${Math.round(body.size.hipGirth - body.size.waistGirth)} mm`,
  },
];
