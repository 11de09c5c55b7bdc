import type { SewingStep, State } from '../../engine/pattern/sewing.ts';
import { type StagedSewing, state } from '../sewing-stages.ts';
import { amounts, cautions, workroomRules as rules } from '../sewing-words.ts';
import type { PanelCut } from './panel-cut.ts';

/** How the panels of the bodice are sewn. */
export const bodiceSewing = (cut: PanelCut): StagedSewing => ({
  trial: [
    {
      title: 'Sew a trial bodice and fit it',
      how: [
        'Cut the bodice panels from cheap firm cloth, with wide allowances, and tack them together.',
        'Try it on over the underwear the dress will be worn with. Write what you pin where it pulls or gapes under “fitting:” in her measurements, and draft again.',
      ],
      amounts: amounts(rules.trialAllowance),
      cautions: [cautions.pins],
    },
  ],
  'stay-stitch': [
    {
      title: 'Stay-stitch neckline and armholes',
      brings: stayStitched(cut),
      stitch: '301',
      seamClass: 8,
      how: ['Stitch each curve by itself, within the allowance, so that it does not stretch while you sew.'],
      amounts: amounts(rules.stayLine),
    },
  ],
  ...(cut.plan.lines.style.front === 'parted' ? { 'under-bust': [underBust] } : {}),
  princess: [
    ...(cut.plan.lines.style.front === 'gathered'
      ? []
      : [plainPrincess(cut.plan.lines.style.front === 'parted')]),
    {
      title: 'Sew the back princess seams',
      sews: ['back princess'],
      presses: ['back princess'],
      stitch: '301',
      seamClass: 1,
      how: [
        'Pin each side back to its centre back, right sides together, notch to notch, and sew from the waist up.',
        'Neaten the edges; clip the hollow one where it pulls; press open over something round.',
      ],
    },
  ],
  ...(cut.plan.lines.style.shoulder === 'whole' ? { strap: [shoulders] } : {}),
  side: [
    {
      title: 'Sew the side seams',
      sews: ['side'],
      presses: ['side'],
      stitch: '301',
      seamClass: 1,
      how: [
        'Tack the side seams first and try the bodice on: here it is most easily let out or taken in.',
        'Sew from underarm to waist, neaten the edges and press open.',
      ],
      cautions: [cautions.pins],
    },
  ],
});

const underBust: SewingStep = {
  title: 'Sew the under-bust seam',
  sews: ['under-bust'],
  presses: ['under-bust'],
  stitch: '301',
  seamClass: 1,
  how: [
    'Sew the upper centre front to the lower one, right sides together, centre front on centre front; neaten and press down.',
  ],
};

const plainPrincess = (parted: boolean): SewingStep => ({
  title: 'Sew the front princess seams',
  sews: ['front princess, lower', 'front princess, upper'],
  presses: ['front princess, lower', 'front princess, upper'],
  stitch: '301',
  seamClass: 1,
  how: [
    `Pin each side front to the centre front, right sides together: waist, ${parted ? 'under-bust seam' : 'under-bust level'}, bust notch, top. Clip the centre front’s edge to within a thread or two of the line where it must bend round the bust.`,
    'Sew from the waist up, the side front on top over the bust. Clip and notch the allowances, neaten, and press open over something round.',
  ],
});

const shoulders: SewingStep = {
  title: 'Sew the shoulder seams',
  sews: ['shoulder'],
  presses: ['shoulder'],
  stitch: '301',
  seamClass: 1,
  how: ['Sew the shoulders, right sides together, neckline to neckline, and press open.'],
};

/** The curved edges that would stretch: necklines, and the armhole on the panels. */
function stayStitched({ plan, armholes }: PanelCut): readonly State[] {
  const { style } = plan.lines;
  const front =
    style.front === 'gathered' ? [] : [style.front === 'parted' ? 'upper centre front' : 'centre front'];
  return [
    ...['centre back', ...front].map((piece) => state(piece, 'stay-stitched', 'neckline')),
    ...[...armholes.front.edges, ...armholes.back.edges]
      .filter(({ edge }) => edge.startsWith('armhole'))
      .map(({ piece, edge }) => state(piece, 'stay-stitched', edge)),
  ];
}
