import type { SewingStep } from '../../engine/pattern/sewing.ts';
import type { PanelCut } from '../bodice/panel-cut.ts';
import { panelsStayed } from '../bodice/sewing.ts';
import { cautions } from '../cautions.ts';
import type { StagedSewing } from '../sewing-stages.ts';
import { amounts, workroomRules as workroom } from '../workroom-rules.ts';

/**
 * How a trial bodice is put together: in long stitches that come out again, nothing clipped or trimmed that may have to be
 * let out, and how it is tried on.
 */
export const trialSewing = (cut: PanelCut): StagedSewing => ({
  'stay-stitch': [panelsStayed(cut, [])],
  princess: [
    {
      ...tacked(['front princess, lower', 'front princess, upper']),
      title: 'Tack the front princess seams',
      how: [
        'Pin each side front to the centre front, right sides together: waist, under-bust level, bust notch, top. Clip the centre front’s edge, no further than it must be to bend round the bust.',
        'Sew from the waist up in long stitches, the side front on top over the bust; press the seam open with your fingers.',
      ],
    },
    {
      ...tacked(['back princess']),
      title: 'Tack the back princess seams',
      how: [
        'Pin each side back to its centre back, right sides together, notch to notch, and sew from the waist up in long stitches.',
      ],
    },
  ],
  strap: [
    {
      ...tacked(['shoulder']),
      title: 'Tack the shoulder seams',
      how: ['Sew the shoulders in long stitches, right sides together, neckline to neckline.'],
    },
  ],
  side: [
    {
      ...tacked(['side']),
      title: 'Tack the side seams',
      how: [
        'Sew the side seams in long stitches from underarm to waist.',
        'Turn the allowances of neck, armholes and centre back to the inside along their stitching lines, and tack them down; clip the hollow ones no deeper than half way.',
      ],
    },
  ],
  finish: [tryOn],
});

/** Seams that are opened again where they have to be. */
const tacked = (sews: readonly string[]): Omit<SewingStep, 'title' | 'how'> => ({
  sews,
  presses: sews,
  stitch: '301',
  seamClass: 1,
  finish: 'raw',
});

const tryOn: SewingStep = {
  title: 'Try it on, and write down what you pin',
  how: [
    'Put it on over the underwear the dress will be worn with, and pin the back shut, centre back on centre back.',
    'The lines at bust and under-bust and across the arms should run level, the plumb lines hang upright, the crosses lie on her bust points, and the seam at the waist on hers.',
    'Pin out what gapes or stands off; where it strains, open the seam and pin it as it wants to lie. Write on each line what was pinned beside it.',
    'Write the same under “fitting:” in her measurements, and draft the dress with it.',
  ],
  amounts: amounts(workroom.trialAllowance, workroom.leastAllowance),
  cautions: [cautions.pins],
};
