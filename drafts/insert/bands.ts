import { bandTable } from '../../engine/pattern/band-table.ts';
import { fromMemory } from '../../engine/sources.ts';

/** Between which limits a cutter expects the fullness of an insert. */
export const insertBands = bandTable({
  gathered: ['insert gathered at the bottom', 1.3, 2.2, 'ratio', fromMemory],
  drawn: ['insert drawn along the neckline', 1.2, 2.2, 'ratio', fromMemory],
});
