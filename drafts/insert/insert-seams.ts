import type { Join, Seam } from '../../engine/pattern/seam.ts';
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

/** Its bottom is one line; its sides, which gather towards the under-bust seam, turn there and at the fold of the neckline. */
export const insertJoins: readonly Join[] = [
  {
    kind: 'along',
    name: 'bottom of the insert at the left notch',
    piece: 'insert',
    from: 'bottom left end',
    to: 'bottom',
  },
  {
    kind: 'along',
    name: 'bottom of the insert at the right notch',
    piece: 'insert',
    from: 'bottom',
    to: 'bottom right end',
  },
  ...(['left', 'right'] as const).flatMap((side): Join[] => [
    {
      kind: 'mirror',
      name: `insert folded at the neckline, ${side}`,
      turns: true,
      a: { piece: 'insert', edge: `${side} side`, seam: 'neckline' },
    },
    {
      kind: 'across',
      name: `insert at the under-bust seam, ${side}`,
      turns: true,
      a: { piece: 'insert', edge: `${side} side`, seam: `bottom ${side} end` },
      b: { piece: 'centre front', edge: 'princess', seam: 'under-bust end' },
    },
  ]),
];
