import type { SeamFinish } from '../../engine/pattern/finishes.ts';
import type { SewingStep } from '../../engine/pattern/sewing.ts';
import { cautions } from '../cautions.ts';
import { type Finishing, orderOf } from '../finishing.ts';
import { type StagedSewing, state } from '../sewing-stages.ts';
import { stayTapes } from '../stays.ts';
import { amounts, workroomRules as workroom } from '../workroom-rules.ts';

/** How the straps are made and sewn on: open along the armhole for a sleeve, or closed to a tube. */
export const strapSewing = (sleeves: boolean, finishing: Finishing): StagedSewing =>
  sleeves
    ? { prepare: [joinParts, sewInner], strap: [sewOn(finishing.together), closeForSleeve] }
    : { prepare: [joinParts, makeTube], strap: [sewOn(finishing.together)] };

const joinParts: SewingStep = {
  title: 'Sew the straps at the shoulder',
  sews: ['strap, shoulder'],
  presses: ['strap, shoulder'],
  stitch: '301',
  seamClass: 1,
  finish: 'enclosed',
  how: [
    'Each strap has a front part, marked with a single notch, and a back part with a double one. Sew them to each other at the shoulder, right sides together, the outer layer and the layer that faces it each by themselves; press open.',
  ],
};

const trimmed =
  'Sew the tape in along the inner edge, so that it keeps its length. Trim the allowance in steps, clip it where it is hollow, turn the strap right side out and press.';

const sewInner: SewingStep = {
  title: 'Face the straps along the neckline',
  needs: [],
  brings: [state('front strap', 'folded', 'inner'), state('back strap', 'folded', 'inner')],
  sews: ['strap, inner edge'],
  presses: ['strap, inner edge'],
  uses: [stayTapes.straps],
  stitch: '301',
  seamClass: 1,
  finish: 'graded',
  how: [
    'Lay the two layers of each strap right sides together, shoulder seam on shoulder seam, and sew along the inner edge, the one without notches.',
    trimmed,
  ],
  amounts: amounts(workroom.edgeStitch),
  cautions: [cautions.hotEdge],
};

const makeTube: SewingStep = {
  title: 'Sew the straps to tubes and turn them',
  brings: [state('front strap', 'folded', 'inner'), state('back strap', 'folded', 'inner')],
  sews: ['strap, inner edge', 'strap, outer edge'],
  presses: ['strap, inner edge', 'strap, outer edge'],
  uses: [stayTapes.straps],
  stitch: '301',
  seamClass: 1,
  finish: 'graded',
  how: [
    'Lay the two layers of each strap right sides together, shoulder seam on shoulder seam, and sew along both long edges.',
    `${trimmed} A bodkin brings the end through.`,
  ],
  cautions: [cautions.hotEdge],
};

const sewOn = (finish: SeamFinish): SewingStep => ({
  title: 'Sew the straps on',
  needs: [state('front strap', 'folded', 'inner'), state('back strap', 'folded', 'inner')],
  sews: ['front strap', 'back strap'],
  presses: ['front strap', 'back strap'],
  stitch: '301',
  seamClass: 1,
  finish,
  how: [
    'Lay the end with the single notch on the side front, the end with the double notch on the side back, right sides together, the faced edge towards the neck; sew through all layers, without twisting the strap.',
    `The inner edge ends flush with the top of the panel beside it. Press the allowances away from the strap; ${orderOf(finish)}.`,
  ],
});

const closeForSleeve: SewingStep = {
  title: 'Close the outer edges of the straps',
  sews: ['strap, outer edge'],
  presses: ['strap, outer edge'],
  stitch: '301',
  seamClass: 1,
  finish: 'enclosed',
  how: ['Sew the two open edges of each strap together along the armhole, just within the allowance.'],
};
