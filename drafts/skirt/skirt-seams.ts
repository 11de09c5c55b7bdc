import type { Corner, Girth, Join, Seam } from '../../engine/pattern/garment.ts';
import type { GoreSizes } from './gore-sizes.ts';

const plain = (name: string, a: readonly [string, string], b: readonly [string, string]): Seam => ({
  name,
  a: [{ piece: a[0], edge: a[1] }],
  b: [{ piece: b[0], edge: b[1], reversed: true }],
  ease: 0,
  gatherRatio: 1,
});

/** How the gores are sewn to each other, equal edge for edge; the side seam's edges both run down their pieces. */
export const skirtSeams: readonly Seam[] = [
  plain(
    'skirt, front princess',
    ['skirt centre front', 'front princess'],
    ['skirt side front', 'front princess'],
  ),
  {
    name: 'skirt, side',
    a: [{ piece: 'skirt side front', edge: 'side' }],
    b: [{ piece: 'skirt side back', edge: 'side' }],
    ease: 0,
    gatherRatio: 1,
  },
  plain('skirt, back princess', ['skirt centre back', 'back princess'], ['skirt side back', 'back princess']),
];

/** The skirt sewn to the bodice: each gore to the panel it continues. */
export const waistSeams: readonly Seam[] = ['centre front', 'side front', 'side back', 'centre back'].map(
  (panel) => plain(`waist, ${panel}`, [`skirt ${panel}`, 'waist'], [panel, 'waist']),
);

const corner = (gore: string, edge: string, seam: string): Corner => ({ piece: `skirt ${gore}`, edge, seam });

/** Waist and hem run on without a corner over every seam of the skirt. */
export const skirtJoins: readonly Join[] = ['waist', 'hem'].flatMap((line): Join[] => [
  {
    kind: 'mirror',
    name: `skirt ${line} at centre front`,
    a: corner('centre front', line, 'centre front'),
  },
  {
    kind: 'across',
    name: `skirt ${line} at the front princess seam`,
    a: corner('centre front', line, 'front princess'),
    b: corner('side front', line, 'front princess'),
  },
  {
    kind: 'across',
    name: `skirt ${line} at the side seam`,
    a: corner('side front', line, 'side'),
    b: corner('side back', line, 'side'),
  },
  {
    kind: 'across',
    name: `skirt ${line} at the back princess seam`,
    a: corner('side back', line, 'back princess'),
    b: corner('centre back', line, 'back princess'),
  },
  { kind: 'mirror', name: `skirt ${line} at centre back`, a: corner('centre back', line, 'centre back') },
]);

const gores = ['skirt centre front', 'skirt side front', 'skirt side back', 'skirt centre back'];

/** The hips measured straight across the gores, and the hem along its edge. */
export const skirtGirths = (hipGirth: number, { hipEase, sweep }: GoreSizes): readonly Girth[] => [
  {
    level: 'hip',
    body: hipGirth,
    ease: hipEase,
    parts: gores.map((piece) => ({ kind: 'line', piece, line: 'hip level', times: 2 })),
  },
  {
    level: 'hem',
    body: sweep,
    ease: 0,
    parts: gores.map((piece) => ({ kind: 'edge', piece, edge: 'hem', times: 2 })),
  },
];
