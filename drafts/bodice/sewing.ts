import type { SeamFinish } from '../../engine/pattern/finishes.ts';
import type { SewingStep, State } from '../../engine/pattern/sewing.ts';
import { cautions } from '../cautions.ts';
import { type Finishing, orderOf } from '../finishing.ts';
import { type StagedSewing, state } from '../sewing-stages.ts';
import { stayTapes } from '../stays.ts';
import { amounts, workroomRules as rules } from '../workroom-rules.ts';
import type { PanelCut } from './panel-cut.ts';

/** What the sewing of the panels is told: how raw edges are finished, and which stay tapes there are. */
export interface PanelWork {
  readonly finishing: Finishing;
  readonly tapes: readonly string[];
}

/** How the panels of the bodice are sewn. */
export const bodiceSewing = (cut: PanelCut, { finishing, tapes }: PanelWork): StagedSewing => ({
  trial: [trialFirst],
  'stay-stitch': [panelsStayed(cut, tapes)],
  ...(cut.plan.lines.style.front === 'parted' ? { 'under-bust': [underBust(finishing.together)] } : {}),
  princess: [
    ...(cut.plan.lines.style.front === 'gathered'
      ? []
      : [plainPrincess(cut.plan.lines.style.front === 'parted', finishing.open)]),
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
  ...(cut.plan.lines.style.shoulder === 'whole' ? { strap: [shoulders(finishing.open, tapes)] } : {}),
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

/** The stay stitching of necklines and armholes, with the tapes that there are. */
export const panelsStayed = (cut: PanelCut, tapes: readonly string[]): SewingStep => ({
  title: 'Stay-stitch neckline and armholes',
  brings: stayStitched(cut),
  ...usedOf(tapes, [stayTapes.backNeck, stayTapes.frontNeck]),
  stitch: '301',
  seamClass: 8,
  how: [
    'Stitch each curve by itself, within the allowance, so that it does not stretch while you sew.',
    ...(tapes.includes(stayTapes.backNeck) ? ['Along the necklines stitch the tape on as you go.'] : []),
  ],
  amounts: amounts(rules.stayLine),
});

const trialFirst: SewingStep = {
  title: 'Sew a trial bodice and fit it',
  how: [
    'Draft the trial bodice (the garment “trial”), cut it from cheap firm cloth and tack it together: its allowances are wide, and the lines to look at are drawn on it.',
    'Try it on over the underwear the dress will be worn with. Write what you pin where it pulls or gapes under “fitting:” in her measurements, and draft again.',
  ],
  amounts: amounts(rules.trialAllowance, rules.leastAllowance),
  cautions: [cautions.pins],
};

const underBust = (finish: SeamFinish): SewingStep => ({
  title: 'Sew the under-bust seam',
  sews: ['under-bust'],
  presses: ['under-bust'],
  stitch: '301',
  seamClass: 1,
  finish,
  how: [
    `Sew the upper centre front to the lower one, right sides together, centre front on centre front; ${orderOf(finish)}, and press down.`,
  ],
});

const plainPrincess = (parted: boolean, finish: SeamFinish): SewingStep => ({
  title: 'Sew the front princess seams',
  sews: ['front princess, lower', 'front princess, upper'],
  presses: ['front princess, lower', 'front princess, upper'],
  stitch: '301',
  seamClass: 1,
  finish,
  how: [
    `Pin each side front to the centre front, right sides together: waist, ${parted ? 'under-bust seam' : 'under-bust level'}, bust notch, top. Clip the centre front’s edge to within a thread or two of the line where it must bend round the bust.`,
    `Sew from the waist up, the side front on top over the bust. Clip and notch the allowances, ${orderOf(finish)}, and press open over something round.`,
  ],
});

const shoulders = (finish: SeamFinish, tapes: readonly string[]): SewingStep => ({
  title: 'Sew the shoulder seams',
  sews: ['shoulder'],
  presses: ['shoulder'],
  ...usedOf(tapes, [stayTapes.shoulders]),
  stitch: '301',
  seamClass: 1,
  finish,
  how: [
    `Sew the shoulders, right sides together, neckline to neckline${tapes.includes(stayTapes.shoulders) ? ', the tape caught in so that the seam keeps its length' : ''}; ${orderOf(finish)}, and press open.`,
  ],
});

/** The stay tapes that a step uses, of those that there are. */
function usedOf(tapes: readonly string[], wanted: readonly string[]): Pick<SewingStep, 'uses'> {
  const uses = wanted.filter((name) => tapes.includes(name));
  return uses.length > 0 ? { uses } : {};
}

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
