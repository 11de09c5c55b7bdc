import type { Seam } from '../../engine/pattern/garment.ts';

/** How the insert is sewn in: flat to both side fronts, gathered to the under-bust seam between notches. */
export const insertSeams = (fullness: number): readonly Seam[] => [
  {
    name: 'under-bust, gathered',
    a: [{ piece: 'insert', edge: 'bottom' }],
    b: [
      { piece: 'centre front', edge: 'under-bust', reversed: true },
      { piece: 'centre front', edge: 'under-bust' },
    ],
    ease: 0,
    gatherRatio: fullness,
  },
  {
    name: 'under-bust, left end',
    a: [{ piece: 'insert', edge: 'bottom left end' }],
    b: [{ piece: 'centre front', edge: 'under-bust end', reversed: true }],
    ease: 0,
    gatherRatio: 1,
  },
  {
    name: 'under-bust, right end',
    a: [{ piece: 'insert', edge: 'bottom right end' }],
    b: [{ piece: 'centre front', edge: 'under-bust end' }],
    ease: 0,
    gatherRatio: 1,
  },
  {
    name: 'front princess, upper left',
    a: [{ piece: 'insert', edge: 'left side' }],
    b: [{ piece: 'side front', edge: 'princess upper', reversed: true }],
    ease: 0,
    gatherRatio: 1,
    side: 'left',
  },
  {
    name: 'front princess, upper right',
    a: [{ piece: 'insert', edge: 'right side' }],
    b: [{ piece: 'side front', edge: 'princess upper' }],
    ease: 0,
    gatherRatio: 1,
    side: 'right',
  },
];
