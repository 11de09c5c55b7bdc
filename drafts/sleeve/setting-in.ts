import type { SeamFinish } from '../../engine/pattern/finishes.ts';
import type { SewingStep } from '../../engine/pattern/sewing.ts';
import { cautions } from '../cautions.ts';
import { orderOf } from '../finishing.ts';
import { state } from '../sewing-stages.ts';
import { amounts, workroomRules as workroom } from '../workroom-rules.ts';

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
  ...(finish === 'raw' ? {} : { amounts: amounts(workroom.underarmTrim) }),
});

/** A plain sleeve, its crown eased to the armhole. */
export const setInEased = (finish: SeamFinish): SewingStep =>
  setIn(finish, {
    title: 'Ease the crowns and set in the sleeves',
    how: [
      'The single notch is the front: check that you have the right sleeve. Put it into the armhole, right sides together; pin sleeve seam to side seam, notch to notch, shoulder mark to shoulder seam.',
      'Draw up the rows until the crown fits between the notches and spread the ease without a gather; shrink it in over the end of the ironing board. Sew with the sleeve on top.',
      finish === 'raw'
        ? 'Trim nothing: it may have to be let out.'
        : `Trim the underarm, ${orderOf(finish)}, and press the allowance into the sleeve.`,
    ],
    cautions: [cautions.hotEdge],
  });

/** A puff, its crown gathered to the armhole. */
export const setInGathered = (finish: SeamFinish): SewingStep =>
  setIn(finish, {
    title: 'Gather the crowns and set in the sleeves',
    how: [
      'The single notch is the front: check that you have the right sleeve. Put it into the armhole, right sides together; pin sleeve seam to side seam, notch to notch, shoulder mark to the shoulder mark of the strap.',
      'Below the notches the edges lie flat on each other. Draw up the rows until the crown fits between the notches, keep most of the fullness over the strap, and sew with the gathers on top.',
      `Trim the underarm, ${orderOf(finish)}, and press the allowance only.`,
    ],
    cautions: [cautions.gathers],
  });
