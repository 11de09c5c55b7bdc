import { type StagedSewing, state } from '../sewing-stages.ts';
import { cautions } from '../sewing-words.ts';

/** How the straps are folded and sewn on. */
export const strapSewing: StagedSewing = {
  prepare: [
    {
      title: 'Fold the straps',
      brings: [state('strap', 'folded', 'fold')],
      how: ['Fold each strap lengthwise along its line, wrong sides together, and press the fold.'],
      cautions: [cautions.hotEdge],
    },
  ],
  strap: [
    {
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
        'Lay the folded strap on the end of the side front, right sides together, fold towards the neck and open edges towards the armhole; sew through all layers. The same at the side back, without twisting the strap.',
        'The fold ends flush with the top of the panel beside it. Press the allowances away from the strap.',
      ],
    },
    {
      title: 'Close the long edges of the straps',
      sews: ['strap, long edge'],
      presses: ['strap, long edge'],
      stitch: '301',
      seamClass: 1,
      how: ['Sew the two open edges of each strap together along the armhole, just within the allowance.'],
    },
  ],
};
