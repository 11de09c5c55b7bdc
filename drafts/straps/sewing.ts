import type { SeamFinish } from '../../engine/pattern/finishes.ts';
import type { SewingStep } from '../../engine/pattern/sewing.ts';
import { orderOf } from '../finishing.ts';
import { type StagedSewing, state } from '../sewing-stages.ts';
import { cautions } from '../sewing-words.ts';
import { strapStay } from '../stays.ts';

/** How the straps are folded and sewn on: open along the armhole for a sleeve, or closed to a tube. */
export const strapSewing = (sleeves: boolean, finish: SeamFinish): StagedSewing =>
  sleeves
    ? { prepare: [fold], strap: [sewOn('open edges towards the armhole', finish), closeForSleeve] }
    : { prepare: [makeTube], strap: [sewOn('seam towards the armhole', finish)] };

const fold: SewingStep = {
  title: 'Fold the straps',
  brings: [state('strap', 'folded', 'fold')],
  uses: [strapStay],
  how: [
    'Lay the tape along the line on the wrong side and tack it down. Fold each strap lengthwise along it, wrong sides together, and press the fold.',
  ],
  cautions: [cautions.hotEdge],
};

const makeTube: SewingStep = {
  title: 'Sew the straps to tubes and turn them',
  brings: [state('strap', 'folded', 'fold')],
  uses: [strapStay],
  sews: ['strap, long edge'],
  presses: ['strap, long edge'],
  stitch: '301',
  seamClass: 1,
  finish: 'enclosed',
  how: [
    'Tack the tape along the line on the wrong side. Fold each strap lengthwise along it, right sides together, and sew its long edges to each other.',
    'Trim the allowance, turn the strap right side out with a bodkin, and press it with the seam at one edge, the fold at the other.',
  ],
  cautions: [cautions.hotEdge],
};

const sewOn = (lying: string, finish: SeamFinish): SewingStep => ({
  title: 'Sew the straps on',
  needs: [state('strap', 'folded', 'fold')],
  sews: ['front strap', 'back strap'],
  presses: ['front strap', 'back strap'],
  catches: [
    { piece: 'strap', edge: 'front end facing' },
    { piece: 'strap', edge: 'back end facing' },
  ],
  stitch: '301',
  seamClass: 1,
  finish,
  how: [
    `Lay the folded strap on the end of the side front, right sides together, fold towards the neck and ${lying}; sew through all layers. The same at the side back, without twisting the strap.`,
    `The fold ends flush with the top of the panel beside it. Press the allowances away from the strap; ${orderOf(finish)}.`,
  ],
});

const closeForSleeve: SewingStep = {
  title: 'Close the long edges of the straps',
  sews: ['strap, long edge'],
  presses: ['strap, long edge'],
  stitch: '301',
  seamClass: 1,
  finish: 'enclosed',
  how: ['Sew the two open edges of each strap together along the armhole, just within the allowance.'],
};
