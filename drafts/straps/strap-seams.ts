import type { Join, Seam } from '../../engine/pattern/garment.ts';

/** How a strap is sewn: folded on itself, and its ends to the side panels. */
export const strapSeams: readonly Seam[] = [
  {
    name: 'strap, long edge',
    a: [{ piece: 'strap', edge: 'outer facing' }],
    b: [{ piece: 'strap', edge: 'outer', reversed: true }],
    ease: 0,
    gatherRatio: 1,
  },
  {
    name: 'front strap',
    a: [{ piece: 'side front', edge: 'strap' }],
    b: [{ piece: 'strap', edge: 'front end', reversed: true }],
    ease: 0,
    gatherRatio: 1,
  },
  {
    name: 'back strap',
    a: [{ piece: 'side back', edge: 'strap' }],
    b: [{ piece: 'strap', edge: 'back end' }],
    ease: 0,
    gatherRatio: 1,
  },
];

/** The armhole runs from the panels onto the strap's outer edge without a corner. */
export const strapJoins: readonly Join[] = [
  {
    kind: 'across',
    name: 'armhole at the front strap',
    a: { piece: 'side front', edge: 'armhole upper', seam: 'strap' },
    b: { piece: 'strap', edge: 'outer', seam: 'front end' },
  },
  {
    kind: 'across',
    name: 'armhole at the back strap',
    a: { piece: 'side back', edge: 'armhole upper', seam: 'strap' },
    b: { piece: 'strap', edge: 'outer', seam: 'back end' },
  },
];
