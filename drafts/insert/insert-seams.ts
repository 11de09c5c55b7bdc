import type { Seam } from '../../engine/pattern/seam.ts';
import { backwards, edge, gatheredSeam, plainSeam } from '../seams.ts';

/** How the insert is sewn in: flat to both side fronts, gathered to the under-bust seam between notches. */
export const insertSeams = (fullness: number): readonly Seam[] => [
  gatheredSeam(
    'under-bust, gathered',
    [edge('insert', 'bottom')],
    [backwards('centre front', 'under-bust'), edge('centre front', 'under-bust')],
    fullness,
  ),
  plainSeam(
    'under-bust, left end',
    [edge('insert', 'bottom left end')],
    [backwards('centre front', 'under-bust end')],
  ),
  plainSeam(
    'under-bust, right end',
    [edge('insert', 'bottom right end')],
    [edge('centre front', 'under-bust end')],
  ),
  {
    ...plainSeam(
      'front princess, upper left',
      [edge('insert', 'left side')],
      [backwards('side front', 'princess upper')],
    ),
    side: 'left',
  },
  {
    ...plainSeam(
      'front princess, upper right',
      [edge('insert', 'right side')],
      [edge('side front', 'princess upper')],
    ),
    side: 'right',
  },
];
