import type { SeamFinish } from '../../engine/pattern/finishes.ts';
import type { SewingStep } from '../../engine/pattern/sewing.ts';
import { cautions } from '../cautions.ts';
import { exposed, insideBodice, orderOf } from '../finishing.ts';
import { liningOf } from '../lining/lining-pieces.ts';
import type { MakingStyling } from '../making-choices.ts';
import type { StagedSewing } from '../sewing-stages.ts';
import { amounts } from '../workroom-rules.ts';
import { goreNames } from './by-gore.ts';
import { skirtRules as rules } from './rules.ts';
import { skirtSeams } from './skirt-seams.ts';

const gores = skirtSeams.map(({ name }) => `lining, ${name}`);

const sewGores = (finish: SeamFinish): SewingStep => ({
  title: 'Sew the gores of the skirt lining together',
  sews: gores,
  presses: gores,
  stitch: '301',
  seamClass: 1,
  finish,
  how: [
    `Sew the seams of the lining as those of the skirt, hip notch to hip notch; ${orderOf(finish)}, and press them open.`,
  ],
});

const holdAtWaist = (finish: SeamFinish): SewingStep => ({
  title: 'Stitch the skirt lining to the skirt at the waist',
  sews: ['lining, skirt waist'],
  presses: ['lining, skirt waist'],
  stitch: '301',
  seamClass: 1,
  finish,
  how: [
    'Lay the lining on the skirt, wrong sides together, seam on seam, and stitch along the waist as one. Below it the lining hangs free.',
  ],
});

const hem: SewingStep = {
  title: 'Hem the skirt lining',
  turns: goreNames.map((name) => ({ piece: liningOf(`skirt ${name}`), edge: 'hem' })),
  stitch: '301',
  seamClass: 6,
  finish: 'turned',
  how: [
    'Trim the lining to hang shorter than the hemmed skirt all round. Turn its hem up by half of its allowance, press, turn once more, and stitch close to the inner fold.',
  ],
  amounts: amounts(rules.liningShorter, rules.liningHem),
  cautions: [cautions.hotEdge],
};

/** How the lining of a skirt is made up, held at the waist and hemmed. */
export const liningSewing = (styling: MakingStyling): StagedSewing => ({
  waist: [sewGores(exposed(styling).open), holdAtWaist(insideBodice(styling).together)],
  hem: [hem],
});
