import { bandTable } from '../../engine/pattern/band-table.ts';
import { commonPractice } from '../../engine/sources.ts';

/** Between which limits a cutter expects what she looks at in a strap. */
export const strapBands = bandTable({
  path: ['strap edge, longer than its path', -2, 2, 'mm', commonPractice, 'bound'],
});
