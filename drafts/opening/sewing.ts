import type { SewingStep, State } from '../../engine/pattern/sewing.ts';
import { exposed, orderFirst, orderOf } from '../finishing.ts';
import { liningOf } from '../lining/lining-pieces.ts';
import { type StagedSewing, stagesTogether, state } from '../sewing-stages.ts';
import { liningCentreBack } from '../skirt/lining.ts';
import { amounts } from '../workroom-rules.ts';
import { type Additions, added } from './additions.ts';
import type { OpenedStyling } from './choices.ts';
import { openingRules as rules } from './rules.ts';
import { stayAdded, stayRibbon } from './waist-stay.ts';
import { zipInterfacing } from './zip-notions.ts';

/**
 * The centre back seam and the zip, added to the rest of the sewing, and a skirt lining closed round it. The zip ends
 * `below` mm under the waist. The part of a seam that the zip goes into is tacked and never sewn.
 */
export const openingSewing = (rest: StagedSewing, styling: OpenedStyling, below: number): StagedSewing =>
  stagesTogether([
    added(rest, { ...stayAdded(styling), ...(styling.opening === 'side' ? openAtSide(below) : {}) }),
    {
      'centre back':
        styling.opening === 'back' ? [backZip(styling, below)] : [backSeam(styling), sideZip(styling)],
    },
    styling.skirtLining === 'lined' ? liningRoundZip(styling) : {},
    styling.waistStay === 'ribbon'
      ? { inside: [stayRibbon(styling.opening === 'side' ? underSideZip('zip set in') : [])] }
      : {},
  ]);

/** The left side seam where the zip goes into it. */
const underSideZip = (is: State['is']): readonly State[] =>
  ['side front', 'side back', 'skirt side front', 'skirt side back'].map((piece) => state(piece, is, 'side'));

/** What a zip at the left side makes otherwise in the steps that sew these seams. */
function openAtSide(below: number): Additions {
  const top = `${rules.belowUnderarm.value} mm below the underarm`;
  const end = `the notch ${Math.round(below)} mm below the waist`;
  const tacked = (...pieces: readonly string[]) => pieces.map((piece) => state(piece, 'tacked', 'side'));
  return {
    side: {
      how: [
        `On the left sew only from the underarm to the notch ${top}, and tack the rest by hand: the zip goes there.`,
      ],
      brings: tacked('side front', 'side back'),
    },
    'skirt, side': {
      how: [`On the left sew the side seam from the hem to ${end}, and tack it from there to the waist.`],
      brings: tacked('skirt side front', 'skirt side back'),
    },
    'lining, skirt, side': { how: [`On the left leave the side seam open from the waist to ${end}.`] },
  };
}

const centreBack = (styling: OpenedStyling): Omit<SewingStep, 'title' | 'how'> => ({
  sews: ['centre back'],
  presses: ['centre back'],
  stitch: '301',
  seamClass: 1,
  finish: exposed(styling).open,
});

const backSeam = (styling: OpenedStyling): SewingStep => ({
  ...centreBack(styling),
  title: 'Sew the centre back seam',
  how: [
    `Sew the centre back seam from the hem to the neckline, waist seams meeting; ${orderOf(exposed(styling).open)}, and press it open.`,
  ],
});

/** How either kind of zip is stitched under its tacked seam. */
const stitched: Readonly<Record<OpenedStyling['zipKind'], string>> = {
  centred:
    'Lay the closed zip face down on the allowances, its teeth along the tacked line, and tack it. Stitch down one side, across its end and up the other from the right side.',
  lapped:
    'Let the allowance of the one edge stand out under the tacked line, and stitch it to the zip close to the teeth. Lay the other edge over the zip and stitch it down from the right side, across the end too.',
};

/** What a zip takes, and how it is stitched in, wherever it is. */
const zip = (styling: OpenedStyling) =>
  ({
    uses: ['zip', zipInterfacing, 'hook and eye'],
    amounts: amounts(rules.zipStrip, ...(styling.zipKind === 'lapped' ? [rules.underlap] : [])),
  }) as const;

const ironOn = 'Iron the strips of interfacing onto the allowances that the zip is set into.';

const backZip = (styling: OpenedStyling, below: number): SewingStep => ({
  ...centreBack(styling),
  ...zip(styling),
  title: 'Sew the centre back and set in the zip',
  how: [
    `${ironOn} Sew the centre back seam from the hem up to the notch where the zip ends, ${Math.round(below)} mm below the waist; tack the rest by hand. ${orderFirst(exposed(styling).open)}, and press the whole seam open.`,
    stitched[styling.zipKind],
    `The slider ends ${rules.sliderBelow.value} mm below the neckline, the waist seams level with each other. Take out the tacking, and sew the hook and eye above the slider.`,
  ],
});

const sideZip = (styling: OpenedStyling): SewingStep => ({
  ...zip(styling),
  title: 'Set in the zip at the left side',
  needs: underSideZip('tacked'),
  brings: underSideZip('zip set in'),
  stitch: '301',
  seamClass: 2,
  how: [
    ironOn,
    stitched[styling.zipKind],
    'The waist seams are level with each other. Take out the tacking, and sew the hook and eye at the waist.',
  ],
});

/** The lining of the skirt lies flat until the skirt is closed; then its own centre back is, and it is felled. */
function liningRoundZip(styling: OpenedStyling): StagedSewing {
  const atBack = styling.opening === 'back';
  const opened = atBack
    ? [{ piece: liningOf('skirt centre back'), edge: 'centre back' }]
    : ['front', 'back'].map((half) => ({ piece: liningOf(`skirt side ${half}`), edge: 'side' }));
  const { open } = exposed(styling);
  return {
    inside: [
      {
        title: 'Sew the centre back of the skirt lining',
        sews: [liningCentreBack.name],
        presses: [liningCentreBack.name],
        stitch: '301',
        seamClass: 1,
        finish: open,
        how: [
          atBack
            ? `Sew the centre back of the lining from the hem up to the notch where the zip ends, ${orderOf(open)}, and press the whole seam open.`
            : `Sew the centre back of the lining from the hem to the waist, ${orderOf(open)}, and press it open.`,
        ],
      },
    ],
    finish: [
      {
        title: 'Fell the skirt lining to the zip',
        catches: opened,
        stitch: '200',
        seamClass: 2,
        finish: 'felled',
        how: [
          'Turn the open edges of the skirt lining under along their lines, pin them along the tape of the zip, clear of its teeth, and fell them by hand.',
        ],
      },
    ],
  };
}
