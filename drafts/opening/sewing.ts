import type { SewingStep } from '../../engine/pattern/sewing.ts';
import { liningOf } from '../lining/lining-pieces.ts';
import { type StagedSewing, stagesTogether } from '../sewing-stages.ts';
import { liningCentreBack } from '../skirt/lining.ts';
import type { OpenedStyling } from './choices.ts';
import { openingRules as rules } from './rules.ts';

/**
 * The centre back seam and the zip, added to the rest of the sewing, and a skirt lining closed round it. The zip ends
 * `below` mm under the waist.
 */
export const openingSewing = (rest: StagedSewing, styling: OpenedStyling, below: number): StagedSewing =>
  stagesTogether([
    rest,
    { 'centre back': styling.opening === 'back' ? [backZip(below)] : [backSeam, sideZip(below)] },
    styling.skirtLining === 'lined' ? liningRoundZip(styling.opening) : {},
  ]);

const seam: Omit<SewingStep, 'title' | 'how'> = {
  sews: ['centre back'],
  presses: ['centre back'],
  stitch: '301',
  seamClass: 1,
};

const backZip = (below: number): SewingStep => ({
  ...seam,
  title: 'Sew the centre back and set in the zip',
  uses: ['zip', 'hook and eye'],
  how: [
    `Sew the centre back seam from the hem up to the notch where the zip ends, ${Math.round(below)} mm below the waist; tack the rest and press the whole seam open.`,
    `Set the zip in under the tacked seam, its slider ${rules.sliderBelow.value} mm below the neckline, the waist seams level with each other, and take out the tacking.`,
    'Sew a hook and eye above the slider.',
  ],
});

const backSeam: SewingStep = {
  ...seam,
  title: 'Sew the centre back seam',
  how: ['Sew the centre back seam from the hem to the neckline, waist seams meeting, and press it open.'],
};

const sideZip = (below: number): SewingStep => ({
  title: 'Set in the zip at the left side',
  uses: ['zip', 'hook and eye'],
  stitch: '301',
  seamClass: 2,
  how: [
    `Unpick the left side seam from ${rules.belowUnderarm.value} mm below the underarm to the notch ${Math.round(below)} mm below the waist, tack it shut by hand and press.`,
    'Set the zip in under the tacked seam, waist seams level with each other, take out the tacking, and sew a hook and eye at the waist.',
  ],
});

/** The lining of the skirt lies flat until the skirt is closed; then its own centre back is, and it is felled. */
function liningRoundZip(opening: OpenedStyling['opening']): StagedSewing {
  const atBack = opening === 'back';
  const opened = atBack
    ? [{ piece: liningOf('skirt centre back'), edge: 'centre back' }]
    : ['front', 'back'].map((half) => ({ piece: liningOf(`skirt side ${half}`), edge: 'side' }));
  return {
    inside: [
      {
        title: 'Sew the centre back of the skirt lining',
        sews: [liningCentreBack.name],
        presses: [liningCentreBack.name],
        stitch: '301',
        seamClass: 1,
        how: [
          atBack
            ? 'Sew the centre back of the lining from the hem up to the notch where the zip ends, and press the whole seam open.'
            : 'Sew the centre back of the lining from the hem to the waist, and press it open. Unpick its left side seam from the waist to the notch where the zip ends.',
        ],
      },
    ],
    finish: [
      {
        title: 'Fell the skirt lining to the zip',
        catches: opened,
        stitch: '200',
        seamClass: 2,
        how: [
          'Turn the open edges of the skirt lining under along their lines, pin them along the tape of the zip, clear of its teeth, and fell them by hand.',
        ],
      },
    ],
  };
}
