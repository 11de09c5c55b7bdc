import { claim } from '../../engine/pattern/band-table.ts';
import type { ShapeClaim } from '../../engine/pattern/shape.ts';
import { insertBands as bands } from './bands.ts';
import type { InsertLines } from './insert-lines.ts';

/** What a pattern cutter looks at in the insert. */
export const insertFigures = ({ fullness, drawn }: InsertLines): readonly ShapeClaim[] => [
  claim(
    bands.gathered,
    { kind: 'drafted', piece: 'insert', value: fullness.value, unit: 'ratio' },
    'more cup, more gathers; or as chosen',
  ),
  claim(bands.drawn, { kind: 'drafted', piece: 'insert', value: drawn.value, unit: 'ratio' }, 'as chosen'),
];
