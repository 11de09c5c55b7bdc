import type { Piece } from '../../engine/pattern/piece.ts';
import type { EdgeRef, Girth, Join } from '../../engine/pattern/seam.ts';
import { liningOf } from '../lining/lining-pieces.ts';
import { atCentreBack, lined, liningJoins } from '../lining/lining-seams.ts';
import type { MakingStyling } from '../making-choices.ts';
import type { Parts } from '../parts.ts';
import { backwards, edge, plainSeam } from '../seams.ts';
import { goreNames } from './by-gore.ts';
import { type GoreSizes, sweepAbove } from './gore-sizes.ts';
import { liningSewing } from './lining-sewing.ts';
import { skirtRules as rules } from './rules.ts';
import { skirtJoins, skirtSeams } from './skirt-seams.ts';

/** What a lining adds to a skirt, given its gores drawn once more, shorter, and what the whole lining closes to. */
export const skirtLining = (
  shorterGores: readonly Piece[],
  hipGirth: number,
  sizes: GoreSizes,
  styling: MakingStyling,
): Parts => ({
  pieces: shorterGores.map(inLining),
  seams: [...skirtSeams.map(lined), waistSeam],
  joins: [...liningJoins(skirtJoins), waistAtCentreBack],
  girths: girths(hipGirth, sizes),
  notions: [],
  shapes: [],
  sewing: liningSewing(styling),
});

/** A gore as it is cut of lining, with a narrow hem. */
const inLining = (gore: Piece): Piece => ({
  ...gore,
  name: liningOf(gore.name),
  number: gore.number + 8,
  edges: gore.edges.map((each) =>
    each.turn === 'hem' ? { ...each, allowance: rules.liningHem.value } : each,
  ),
  cut: gore.cut.map((each) => ({ ...each, cloth: 'lining' })),
});

/** The waist from centre front to centre back, of the skirt or of its lining. */
const waistOf = (named: (gore: string) => string): readonly EdgeRef[] =>
  goreNames.map((name) => (name.endsWith('back') ? backwards : edge)(named(`skirt ${name}`), 'waist'));

/** The lining is held to the skirt at the waist, and hangs free below it. */
const waistSeam = plainSeam(
  'lining, skirt waist',
  waistOf(liningOf),
  waistOf((gore) => gore),
);

/** At the centre back the lining hangs behind the skirt: nothing runs on. */
const waistAtCentreBack: Join = {
  kind: 'across',
  name: 'lining, skirt, waist at centre back',
  turns: true,
  a: { piece: liningOf('skirt centre back'), edge: 'centre back', seam: 'waist' },
  b: { piece: 'skirt centre back', edge: 'centre back', seam: 'waist' },
};

const gores = goreNames.map((name) => liningOf(`skirt ${name}`));

/** As wide as the skirt at the hip, and as it is where the lining ends. */
const girths = (hipGirth: number, sizes: GoreSizes): readonly Girth[] => [
  {
    level: 'hip, lining',
    body: hipGirth,
    ease: sizes.hipEase,
    parts: gores.map((piece) => ({ kind: 'line', piece, line: 'hip level', times: 2 })),
  },
  {
    level: 'hem, lining',
    body: sweepAbove(sizes, rules.liningShorter.value),
    ease: 0,
    parts: gores.map((piece) => ({ kind: 'edge', piece, edge: 'hem', times: 2 })),
  },
];

/** The left and the right of the lining, sewn to each other below the zip. */
export const liningCentreBack = atCentreBack('lining, skirt centre back', liningOf('skirt centre back'));
