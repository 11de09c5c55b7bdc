import type { Girth, Join, Seam, SeamCorner } from '../../engine/pattern/seam.ts';
import { backwards, edge, plainSeam } from '../seams.ts';
import { goreNames } from './by-gore.ts';
import type { GoreSizes } from './gore-sizes.ts';

/** How the gores are sewn to each other, equal edge for edge; the side seam's edges both run down their pieces. */
export const skirtSeams: readonly Seam[] = [
  plainSeam(
    'skirt, front princess',
    [edge('skirt centre front', 'front princess')],
    [backwards('skirt side front', 'front princess')],
  ),
  plainSeam('skirt, side', [edge('skirt side front', 'side')], [edge('skirt side back', 'side')]),
  plainSeam(
    'skirt, back princess',
    [edge('skirt centre back', 'back princess')],
    [backwards('skirt side back', 'back princess')],
  ),
];

/** The skirt sewn to the bodice: each gore to the panel it continues. */
export const waistSeams: readonly Seam[] = goreNames.map((panel) =>
  plainSeam(`waist, ${panel}`, [edge(`skirt ${panel}`, 'waist')], [backwards(panel, 'waist')]),
);

/** The centre back runs on from the bodice into the skirt. */
export const waistJoin: Join = {
  kind: 'across',
  name: 'centre back at the waist',
  a: { piece: 'centre back', edge: 'centre back', seam: 'waist' },
  b: { piece: 'skirt centre back', edge: 'centre back', seam: 'waist' },
};

const corner = (gore: string, line: string, seam: string): SeamCorner => ({
  piece: `skirt ${gore}`,
  edge: line,
  seam,
});

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

const gores = goreNames.map((name) => `skirt ${name}`);

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
    body: sweep.value,
    ease: 0,
    parts: gores.map((piece) => ({ kind: 'edge', piece, edge: 'hem', times: 2 })),
  },
];
