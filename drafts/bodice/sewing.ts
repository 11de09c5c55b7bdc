import { type Finishing, orderOf } from '../finishing.ts';
import { type StagedSewing, state } from '../sewing-stages.ts';
import { amounts, cautions, workroomRules as rules } from '../sewing-words.ts';
import { neckStay } from '../stays.ts';

/** How the panels of the bodice are sewn. */
export const bodiceSewing = (finishing: Finishing): StagedSewing => ({
  trial: [
    {
      title: 'Sew a trial bodice and fit it',
      how: [
        'Cut the bodice panels from cheap firm cloth, with wide allowances, and tack them together.',
        'Try it on over the underwear the dress will be worn with. Write what you pin where it pulls or gapes under “fitting:” in her measurements, and draft again.',
      ],
      amounts: amounts(rules.trialAllowance, rules.leastAllowance),
      cautions: [cautions.pins],
    },
  ],
  'stay-stitch': [
    {
      title: 'Stay-stitch neckline and armholes',
      brings: [
        state('centre back', 'stay-stitched', 'neckline'),
        ...['side front', 'side back'].flatMap((piece) => [
          state(piece, 'stay-stitched', 'armhole upper'),
          state(piece, 'stay-stitched', 'armhole underarm'),
        ]),
      ],
      uses: [neckStay],
      stitch: '301',
      seamClass: 8,
      how: [
        'Stitch each curve by itself, within the allowance, so that it does not stretch while you sew; along the back neckline stitch the tape on as you go.',
      ],
      amounts: amounts(rules.stayLine),
    },
  ],
  princess: [
    {
      title: 'Sew the back princess seams',
      sews: ['back princess'],
      presses: ['back princess'],
      stitch: '301',
      seamClass: 1,
      finish: finishing.open,
      how: [
        'Pin each side back to its centre back, right sides together, notch to notch, and sew from the waist up.',
        `Clip the hollow edge where it pulls; ${orderOf(finishing.open)}; press open over something round.`,
      ],
    },
  ],
  side: [
    {
      title: 'Sew the side seams',
      sews: ['side'],
      presses: ['side'],
      stitch: '301',
      seamClass: 1,
      finish: finishing.open,
      how: [
        'Tack the side seams first and try the bodice on: here it is most easily let out or taken in.',
        `Sew from underarm to waist, ${orderOf(finishing.open)}, and press open.`,
      ],
      cautions: [cautions.pins],
    },
  ],
});
