import type { SeamFinish } from '../../engine/pattern/finishes.ts';
import type { SewingStep } from '../../engine/pattern/sewing.ts';
import { cautions } from '../cautions.ts';
import { exposed, type FinishStyling, insideBodice, orderFirst } from '../finishing.ts';
import type { StagedSewing } from '../sewing-stages.ts';
import { goreNames } from './by-gore.ts';
import type { SkirtTable } from './choices.ts';
import { skirtSeams, waistSeams } from './skirt-seams.ts';

const gores = skirtSeams.map(({ name }) => name);
const waist = waistSeams.map(({ name }) => name);

const sewGores = (finish: SeamFinish): SewingStep => ({
  title: 'Sew the gores of the skirt together',
  sews: gores,
  presses: gores,
  stitch: '301',
  seamClass: 1,
  finish,
  how: [
    'Lay the gores out in order round the skirt. Pin neighbours right sides together, hip notch to hip notch, and sew each seam from the hem up, so that the slanting edges do not stretch.',
    `${orderFirst(finish)} and press open. Let the skirt hang overnight before you turn up the hem.`,
  ],
});

const joinWaist = (finish: SeamFinish): SewingStep => ({
  title: 'Join the skirt to the bodice',
  sews: waist,
  presses: waist,
  stitch: '301',
  seamClass: 1,
  finish,
  how: [
    'Put the bodice into the skirt, right sides together; pin centre front, then seam to seam, princess on princess and side on side, and sew once round.',
    `${orderFirst(finish)}. Press both allowances up.`,
  ],
});

const hem = ({ hemAllowance, seamFinish }: SkirtTable['styling']): SewingStep => ({
  title: 'Hem the skirt',
  turns: goreNames.map((name) => ({ piece: `skirt ${name}`, edge: 'hem' })),
  stitch: '200',
  seamClass: 6,
  finish: seamFinish,
  how: [
    'Try the dress on and have the hem measured up from the floor all round; trim what has dropped.',
    `Neaten the raw edge (${seamFinish}). Turn the hem up along its line, seam on seam, and press the fold; the edge is cut as much narrower as the skirt is above, so it lies flat.`,
    'Hem by hand, a thread at a time, so that no stitch shows outside and she can let it down.',
  ],
  amounts: [{ says: 'turned up at the hem', mm: hemAllowance }],
  cautions: [cautions.hotEdge],
});

/** How the skirt itself is sewn. */
export const skirtSewing = (styling: SkirtTable['styling']): StagedSewing => ({
  waist: [sewGores(exposed(styling).open)],
  hem: [hem(styling)],
});

/** How it is sewn to a bodice. */
export const waistSewing = (styling: FinishStyling): StagedSewing => ({
  waist: [joinWaist(insideBodice(styling).together)],
});
