import type { SeamFinish } from '../../engine/pattern/finishes.ts';
import type { Seam } from '../../engine/pattern/seam.ts';
import type { Amount, SewingStep } from '../../engine/pattern/sewing.ts';
import { cautions } from '../cautions.ts';
import { exposed, type FinishStyling, insideBodice, orderOf } from '../finishing.ts';
import { type StagedSewing, state } from '../sewing-stages.ts';
import { amounts, workroomRules as workroom } from '../workroom-rules.ts';
import type { PlainSleeveTable, PuffStyling } from './choices.ts';
import { sleeveRules as rules } from './rules.ts';

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
        how: [`Neaten the raw edge (${open}), turn the hem up along its line, press, and sew it by hand.`],
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

/** Sets the sleeves in, their crowns drawn up to the armholes. */
const setIn = (
  finish: SeamFinish,
  as: Required<Pick<SewingStep, 'title' | 'how' | 'cautions'>>,
): SewingStep => ({
  ...as,
  needs: [
    state('sleeve', 'rows stitched', 'crown'),
    state('side front', 'stay-stitched', 'armhole underarm'),
    state('side back', 'stay-stitched', 'armhole underarm'),
  ],
  brings: [state('sleeve', 'gathered', 'crown')],
  sews: ['armhole, front underarm', 'armhole, back underarm', 'armhole, crown'],
  presses: ['armhole, front underarm', 'armhole, back underarm', 'armhole, crown'],
  stitch: '301',
  seamClass: 1,
  finish,
  amounts: amounts(workroom.underarmTrim),
});

const setInEased = (finish: SeamFinish): SewingStep =>
  setIn(finish, {
    title: 'Ease the crowns and set in the sleeves',
    how: [
      'The single notch is the front: check that you have the right sleeve. Put it into the armhole, right sides together; pin sleeve seam to side seam, notch to notch, shoulder mark to shoulder seam.',
      'Draw up the rows until the crown fits between the notches and spread the ease without a gather; shrink it in over the end of the ironing board. Sew with the sleeve on top.',
      `Trim the underarm, ${orderOf(finish)}, and press the allowance into the sleeve.`,
    ],
    cautions: [cautions.hotEdge],
  });

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

const roomInCasing = ({ elasticWidth }: PuffStyling): Amount => ({
  says: 'room in the casing: the elastic and a quarter inch',
  mm: elasticWidth + rules.casingRoom.value,
  source: `${rules.casingRoom.id}, ${rules.casingRoom.source}`,
});

const turnedCasing = (styling: PuffStyling): SewingStep => ({
  title: 'Turn up the sleeve hems as casings',
  turns: [{ piece: 'sleeve', edge: 'hem' }],
  brings: [state('sleeve', 'casing stitched', 'casing'), state('sleeve', 'opening left', 'casing')],
  stitch: '301',
  seamClass: 6,
  finish: 'turned',
  how: [
    'Turn the raw edge under, turn the hem up along its line, and press.',
    'Stitch round close to the inner fold. Leave an opening beside the sleeve seam.',
  ],
  amounts: [
    ...amounts(rules.turnUnder),
    roomInCasing(styling),
    ...amounts(workroom.edgeStitch, workroom.opening),
  ],
  cautions: [cautions.hotEdge],
});

const foldedCasing = (styling: PuffStyling): SewingStep => ({
  title: 'Fold the sleeves and stitch their casings',
  brings: [
    state('sleeve', 'folded', 'hem'),
    state('sleeve', 'casing stitched', 'casing'),
    state('sleeve', 'opening left', 'casing'),
  ],
  stitch: '301',
  seamClass: 6,
  how: [
    'Turn the half with the gap into the other, wrong sides together, seam on seam and crown on crown, and press the fold of the hem.',
    'Stitch round along the casing line through both layers. From now on the two are handled as one.',
  ],
  amounts: [roomInCasing(styling)],
  cautions: [cautions.iron],
});

const threadElastic: SewingStep = {
  title: 'Thread the elastic',
  needs: [state('sleeve', 'casing stitched', 'casing'), state('sleeve', 'opening left', 'casing')],
  brings: [state('sleeve', 'threaded', 'casing')],
  uses: ['sleeve elastic'],
  stitch: '304',
  seamClass: 2,
  how: [
    'Mark the overlap on both ends, pin the elastic to a ring and try it round the arm.',
    'Thread it through the casing without twisting it, lap the ends to the marks and sew them together.',
  ],
  amounts: amounts(rules.elasticOverlap),
  cautions: [cautions.elastic],
};

const closeCasing = (how: string): SewingStep => ({
  title: 'Close the casings',
  needs: [state('sleeve', 'threaded', 'casing')],
  brings: [state('sleeve', 'casing closed', 'casing')],
  stitch: '301',
  seamClass: 6,
  how: [how],
});

const setInGathered = (finish: SeamFinish): SewingStep =>
  setIn(finish, {
    title: 'Gather the crowns and set in the sleeves',
    how: [
      'The single notch is the front: check that you have the right sleeve. Put it into the armhole, right sides together; pin sleeve seam to side seam, notch to notch, shoulder mark to the shoulder mark of the strap.',
      'Below the notches the edges lie flat on each other. Draw up the rows until the crown fits between the notches, keep most of the fullness over the strap, and sew with the gathers on top.',
      `Trim the underarm, ${orderOf(finish)}, and press the allowance only.`,
    ],
    cautions: [cautions.gathers],
  });
