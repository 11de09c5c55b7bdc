import type { SeamFinish } from '../../engine/pattern/finishes.ts';
import type { Amount, SewingStep } from '../../engine/pattern/sewing.ts';
import { cautions } from '../cautions.ts';
import { type Finishing, orderFirst } from '../finishing.ts';
import { type StagedSewing, state } from '../sewing-stages.ts';
import { amounts, workroomRules as workroom } from '../workroom-rules.ts';
import type { InsertStyling } from './choices.ts';
import { holeInterfacing, necklineTape } from './drawstring.ts';
import type { InsertLines } from './insert-lines.ts';
import { insertRules as rules } from './rules.ts';

/** How the insert is made up and sewn into the front. */
export function insertSewing(lines: InsertLines, styling: InsertStyling, finishing: Finishing): StagedSewing {
  const drawn = styling.necklineGathers === 'drawstring';
  return {
    prepare: [...(drawn ? drawstringCasing(lines, styling) : fixedNeckline(lines)), gatheringRows],
    'under-bust': [underBust(finishing.together)],
    princess: [frontPrincess(drawn, finishing.together)],
  };
}

/** What the neckline measures before and after it is drawn up. */
const neckline = ({ drawn, place }: InsertLines): readonly Amount[] => [
  { says: 'neckline of the insert, flat', mm: 2 * drawn.value * place.neckline.value },
  { says: 'neckline of the insert, drawn up', mm: 2 * place.neckline.value },
];

const drawstringCasing = (lines: InsertLines, styling: InsertStyling): readonly SewingStep[] => [
  {
    title: 'Work the buttonholes for the drawstrings',
    brings: [state('insert', 'buttonholes made', 'casing')],
    uses: [holeInterfacing],
    stitch: '304',
    seamClass: 8,
    how: [
      'Iron a patch of interfacing behind each mark, on the half of the insert that will be outside.',
      'Work both buttonholes through this one layer only and slit them open.',
    ],
    amounts: amounts(rules.buttonholeFromCentre),
    cautions: [cautions.buttonhole],
  },
  {
    title: 'Fold the insert and stitch its casing',
    needs: [state('insert', 'buttonholes made', 'casing')],
    brings: [state('insert', 'folded', 'neckline'), state('insert', 'casing stitched', 'casing')],
    stitch: '301',
    seamClass: 6,
    how: [
      'Fold the insert along its neckline, wrong sides together, and press. Tack the two layers together round the open edges.',
      'Stitch the casing through both layers, from side to side.',
    ],
    amounts: [{ says: 'casing, from the fold to its stitching', mm: styling.casingDepth }],
    cautions: [cautions.hotEdge],
  },
  {
    title: 'Thread the drawstrings',
    needs: [state('insert', 'casing stitched', 'casing')],
    brings: [state('insert', 'threaded', 'casing')],
    uses: ['drawstring'],
    stitch: '301',
    seamClass: 7,
    how: [
      'With a bodkin, lead one cord in at each side edge and out of the buttonhole on its own side.',
      'Sew its end fast in the side allowance, knot the free end, and leave the neckline lying flat.',
    ],
    amounts: [...amounts(rules.cordEnd), ...neckline(lines)],
    cautions: [cautions.drawstring],
  },
];

const fixedNeckline = (lines: InsertLines): readonly SewingStep[] => [
  {
    title: 'Fold the insert and stitch the gathering rows of its neckline',
    brings: [state('insert', 'folded', 'neckline'), state('insert', 'rows stitched', 'neckline')],
    stitch: '301',
    seamClass: 6,
    how: [
      'Fold the insert along its neckline, wrong sides together, and press. Tack the two layers together round the open edges.',
      'Stitch two rows of long stitches along the lines below the fold, and leave the thread ends long.',
    ],
    amounts: amounts(workroom.longStitch),
    cautions: [cautions.hotEdge],
  },
  {
    title: 'Gather the neckline of the insert for good',
    brings: [state('insert', 'gathered', 'neckline')],
    uses: [necklineTape],
    stitch: '301',
    seamClass: 7,
    how: [
      'Draw up the rows until the neckline fits between the straps, spread the gathers evenly, and knot the threads.',
      'Stitch the tape over the rows on the inside, so that the neckline keeps its length.',
    ],
    amounts: neckline(lines),
  },
];

const gatheringRows: SewingStep = {
  title: 'Stitch the gathering rows of the insert',
  needs: [state('insert', 'folded', 'neckline')],
  brings: [state('insert', 'rows stitched', 'bottom')],
  stitch: '301',
  seamClass: 6,
  how: [
    'Stitch two rows of long stitches through both layers along the bottom, from gather notch to gather notch, one on either side of the stitching line. Leave the thread ends long.',
  ],
  amounts: amounts(workroom.rowsApart, workroom.longStitch),
};

const underBust = (finish: SeamFinish): SewingStep => ({
  title: 'Gather the insert and sew the under-bust seam',
  needs: [state('insert', 'rows stitched', 'bottom')],
  brings: [state('insert', 'gathered', 'bottom')],
  sews: ['under-bust, right end', 'under-bust, gathered', 'under-bust, left end'],
  presses: ['under-bust, right end', 'under-bust, gathered', 'under-bust, left end'],
  stitch: '301',
  seamClass: 1,
  finish,
  how: [
    'Pin the insert to the centre front, right sides together: ends, gather notches, centre front.',
    'Draw up both rows together until the gathers fit between their notches; spread them evenly and sew with the gathers on top. The ends beyond the notches stay flat.',
    `${orderFirst(finish)}. Press only the allowance, downwards, with the tip of the iron.`,
  ],
  amounts: amounts(rules.flatEnds),
  cautions: [cautions.gathers],
});

/** The princess seam crosses the ends of the casing, so the cords must be in. */
const frontPrincess = (drawn: boolean, finish: SeamFinish): SewingStep => ({
  title: 'Sew the front princess seams',
  needs: [state('insert', drawn ? 'threaded' : 'gathered', drawn ? 'casing' : 'neckline')],
  closes: drawn ? [state('insert', 'threaded', 'casing')] : [state('insert', 'gathered', 'neckline')],
  sews: ['front princess, lower', 'front princess, upper right', 'front princess, upper left'],
  presses: ['front princess, lower', 'front princess, upper right', 'front princess, upper left'],
  stitch: '301',
  seamClass: 1,
  finish,
  how: [
    'Pin each side front to the front, right sides together: waist, under-bust seam, bust notch, neckline fold. The round edge over the bust is as long as the straight one: clip the straight one to within a thread or two of the line where it must bend.',
    `Sew in one go from the waist up to the fold. ${orderFirst(finish)}, and press towards the side.`,
  ],
});
