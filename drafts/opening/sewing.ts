import type { SewingStep } from '../../engine/pattern/sewing.ts';
import { type StagedSewing, stagesTogether } from '../sewing-stages.ts';
import type { OpeningStyling } from './choices.ts';
import { openingRules as rules } from './rules.ts';

/** The centre back seam and the zip, added to the rest of the sewing. The zip ends `below` mm under the waist. */
export const openingSewing = (rest: StagedSewing, styling: OpeningStyling, below: number): StagedSewing =>
  stagesTogether([
    rest,
    { 'centre back': styling.opening === 'back' ? [backZip(below)] : [backSeam, sideZip(below)] },
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
