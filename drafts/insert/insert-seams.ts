import type { Seam } from '../../engine/pattern/garment.ts';

/** How the insert is sewn in: flat to both side fronts, gathered to the under-bust seam. */
export const insertSeams = (fullness: number): readonly Seam[] => [
  {
    name: 'under-bust',
    a: [{ piece: 'insert', edge: 'bottom' }],
    b: [
      { piece: 'centre front', edge: 'under-bust', reversed: true },
      { piece: 'centre front', edge: 'under-bust' },
    ],
    ease: 0,
    gatherRatio: fullness,
  },
  {
    name: 'front princess, upper right',
    a: [{ piece: 'insert', edge: 'right side' }],
    b: [{ piece: 'side front', edge: 'princess upper', reversed: true }],
    ease: 0,
    gatherRatio: 1,
  },
  {
    name: 'front princess, upper left',
    a: [{ piece: 'insert', edge: 'left side' }],
    b: [{ piece: 'side front', edge: 'princess upper' }],
    ease: 0,
    gatherRatio: 1,
  },
];
