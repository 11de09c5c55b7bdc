import type { SeamFinish } from '../../engine/pattern/finishes.ts';
import type { Seam } from '../../engine/pattern/seam.ts';
import type { SewingStep } from '../../engine/pattern/sewing.ts';
import { cautions } from '../cautions.ts';
import { exposed, type FinishStyling, insideBodice, orderOf } from '../finishing.ts';
import { type StagedSewing, state } from '../sewing-stages.ts';
import { amounts, workroomRules as workroom } from '../workroom-rules.ts';
import { closeCasing, foldedCasing, threadElastic, turnedCasing } from './casing-sewing.ts';
import type { PlainSleeveTable, PuffStyling } from './choices.ts';
import { sleeveRules as rules } from './rules.ts';
import { setInEased, setInGathered } from './setting-in.ts';

/** How puff sleeves are made up, each closed to a ring before it is set in. */
export const puffSewing = (styling: PuffStyling & FinishStyling): StagedSewing =>
  styling.sleeveLining === 'self' ? selfLinedSewing(styling) : singleSewing(styling);

const singleSewing = (styling: PuffStyling & FinishStyling): StagedSewing => ({
  prepare: [gatheringRows('')],
  sleeve: [
    sleeveSeam(
      exposed(styling).open,
      `Fold each sleeve right sides together, sew its seam, ${orderOf(exposed(styling).open)}, and press open.`,
    ),
    turnedCasing(styling),
    threadElastic,
    closeCasing('Stretch the elastic until the opening lies flat, and stitch it shut in line with the rest.'),
  ],
  armhole: [setInGathered(insideBodice(styling).together)],
});

const selfLinedSewing = (styling: PuffStyling & FinishStyling): StagedSewing => ({
  sleeve: [
    sleeveSeam(
      'enclosed',
      'Open each sleeve out and fold it right sides together along the arm. Sew its seam from end to end, but leave a gap in one half, from the fold of the hem to the casing line. Press open: the half with the gap becomes the lining.',
    ),
    foldedCasing(styling),
    threadElastic,
    closeCasing('Stretch the elastic until the casing lies flat, and sew the gap in the seam shut by hand.'),
    gatheringRows('through both layers'),
  ],
  armhole: [setInGathered(insideBodice(styling).together)],
});

/** How plain sleeves are made up and set in. */
export function plainSewing(
  seams: readonly Seam[],
  styling: PlainSleeveTable['styling'] & FinishStyling,
): StagedSewing {
  const { open } = exposed(styling);
  const own = seams.map(({ name }) => name).filter((name) => name.startsWith('sleeve seam'));
  return {
    prepare: [easingRows],
    sleeve: [
      {
        title: 'Sew the sleeve seams',
        sews: own,
        presses: own,
        stitch: '301',
        seamClass: 1,
        finish: open,
        how: [
          `Fold each sleeve right sides together and sew its seam${own.length > 1 ? '; over the elbow the back is a little longer, ease it in' : ''}; ${orderOf(open)}, and press open.`,
        ],
      },
      {
        title: 'Hem the sleeves',
        turns: [{ piece: 'sleeve', edge: 'hem' }],
        stitch: '200',
        seamClass: 6,
        finish: open,
        how: [
          open === 'raw'
            ? 'Turn the hem up along its line, and tack it.'
            : `Neaten the raw edge (${open}), turn the hem up along its line, press, and sew it by hand.`,
        ],
        amounts: amounts(rules.plainHem),
        cautions: [cautions.hotEdge],
      },
    ],
    armhole: [setInEased(insideBodice(styling).together)],
  };
}

const easingRows: SewingStep = {
  title: 'Stitch the easing rows of the sleeves',
  brings: [state('sleeve', 'rows stitched', 'crown')],
  stitch: '301',
  seamClass: 6,
  how: [
    'Stitch two rows of long stitches along the crown from notch to notch, both within the allowance, and leave the thread ends long.',
  ],
  amounts: amounts(workroom.longStitch),
};

const gatheringRows = (layers: '' | 'through both layers'): SewingStep => ({
  title: 'Stitch the gathering rows of the sleeves',
  brings: [state('sleeve', 'rows stitched', 'crown')],
  stitch: '301',
  seamClass: 6,
  how: [
    `Stitch two rows of long stitches along the crown from notch to notch${layers && ` ${layers}`}, one on either side of the stitching line, and leave the thread ends long.`,
  ],
  amounts: amounts(workroom.rowsApart, workroom.longStitch),
});

const sleeveSeam = (finish: SeamFinish, how: string): SewingStep => ({
  title: 'Sew the sleeve seams',
  sews: ['sleeve seam'],
  presses: ['sleeve seam'],
  stitch: '301',
  seamClass: 1,
  finish,
  how: [how],
});
