import type { ShapeClaim } from '../../engine/pattern/shape.ts';
import type { InsertLines } from './insert-lines.ts';

/** What a pattern cutter looks at in the insert. */
export const insertFigures = ({ fullness, drawn }: InsertLines): readonly ShapeClaim[] => [
  {
    kind: 'drafted',
    piece: 'insert',
    name: 'insert gathered at the bottom',
    value: fullness.value,
    unit: 'ratio',
    low: 1.3,
    high: 2.2,
    outside: 'more cup, more gathers; or as chosen',
  },
  {
    kind: 'drafted',
    piece: 'insert',
    name: 'insert drawn along the neckline',
    value: drawn.value,
    unit: 'ratio',
    low: 1.2,
    high: 2.2,
    outside: 'as chosen',
  },
];
