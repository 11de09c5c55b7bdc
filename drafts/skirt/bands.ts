import { bandTable } from '../../engine/pattern/band-table.ts';
import { commonPractice, fromMemory } from '../../engine/sources.ts';

/** Between which limits a cutter expects what she looks at in a gored skirt. */
export const skirtBands = bandTable({
  hip: ['skirt at hip level beyond the body', 50, 400, 'mm', fromMemory],
  sweep: ['hem sweep', 1600, 3200, 'mm', fromMemory],
  rise: ['skirt waist rises from centre front to side', 6, 20, 'mm', fromMemory],
  balance: ['half front more than half back at the hip', 0, 20, 'mm', commonPractice],
});
