import type { SewingStep } from '../../engine/pattern/sewing.ts';
import { type StagedSewing, state } from '../sewing-stages.ts';
import { cautions } from '../sewing-words.ts';

/** How the straps are folded and sewn on: open along the armhole for a sleeve, or closed to a tube. */
export const strapSewing = (sleeves: boolean): StagedSewing =>
  sleeves
    ? { prepare: [fold], strap: [sewOn('open edges towards the armhole'), closeForSleeve] }
    : { prepare: [makeTube], strap: [sewOn('seam towards the armhole')] };

const fold: SewingStep = {
  title: 'Fold the straps',
  brings: [state('strap', 'folded', 'fold')],
  how: ['Fold each strap lengthwise along its line, wrong sides together, and press the fold.'],
  cautions: [cautions.hotEdge],
};

const makeTube: SewingStep = {
  title: 'Sew the straps to tubes and turn them',
  brings: [state('strap', 'folded', 'fold')],
  sews: ['strap, long edge'],
  presses: ['strap, long edge'],
  stitch: '301',
  seamClass: 1,
  how: [
    'Fold each strap lengthwise along its line, right sides together, and sew its long edges to each other.',
    'Trim the allowance, turn the strap right side out with a bodkin, and press it with the seam at one edge, the fold at the other.',
  ],
  cautions: [cautions.hotEdge],
};

const sewOn = (lying: string): SewingStep => ({
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
  how: [
    `Lay the folded strap on the end of the side front, right sides together, fold towards the neck and ${lying}; sew through all layers. The same at the side back, without twisting the strap.`,
    'The fold ends flush with the top of the panel beside it. Press the allowances away from the strap.',
  ],
});

const closeForSleeve: SewingStep = {
  title: 'Close the long edges of the straps',
  sews: ['strap, long edge'],
  presses: ['strap, long edge'],
  stitch: '301',
  seamClass: 1,
  how: ['Sew the two open edges of each strap together along the armhole, just within the allowance.'],
};
