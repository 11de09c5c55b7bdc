import type { Join, SeamCorner } from '../../engine/pattern/seam.ts';
import { armholeJoins, shoulderJoins } from './armhole-joins.ts';
import { upperFront } from './bodice-seams.ts';
import { across, at, turning } from './corners.ts';
import { hasNoCorner } from './front-neckline.ts';
import type { PanelCut } from './panel-cut.ts';
import type { Style } from './style.ts';

/** Where the panels' lines go on once sewn: necklines turn where they have a point or a corner, all else runs on. */
export function bodiceJoins({ plan, armholes }: PanelCut): readonly Join[] {
  const { style } = plan.lines;
  const mirror = (name: string, a: SeamCorner): Join => ({ kind: 'mirror', name, a });
  const upper = upperFront(style);
  return [
    ...waistJoins,
    {
      kind: 'along',
      name: 'side front princess at the under-bust seam',
      piece: 'side front',
      from: 'princess lower',
      to: 'princess upper',
    },
    ...(style.front === 'plain'
      ? [
          {
            kind: 'along' as const,
            name: 'centre front princess at the under-bust level',
            piece: 'centre front',
            from: 'princess upper',
            to: 'princess',
          },
        ]
      : [mirror('under-bust seam at centre front', at('centre front', 'under-bust', 'centre front'))]),
    ...(style.front === 'gathered'
      ? []
      : [
          {
            ...mirror('front neckline at centre front', at(upper, 'neckline', 'centre front')),
            ...turning(style.neckline === 'pointed' || style.neckline === 'sweetheart'),
          },
        ]),
    {
      ...mirror('neckline at centre back', at('centre back', 'neckline', 'centre back')),
      ...turning(style.backNeckline === 'pointed'),
    },
    ...frontSeamJoins(style),
    across(
      'armhole at the side seam',
      at('side front', 'armhole underarm', 'side'),
      at('side back', 'armhole underarm', 'side'),
    ),
    ...armholeJoins(armholes.front, 'front'),
    ...armholeJoins(armholes.back, 'back'),
    ...(style.shoulder === 'whole' ? shoulderJoins(plan.lines, armholes) : []),
  ];
}

/** Along and over the seams that only some fronts have. */
function frontSeamJoins(style: Style): readonly Join[] {
  const upper = upperFront(style);
  if (style.front === 'gathered')
    return [
      {
        kind: 'along',
        name: 'under-bust seam where the gathers end',
        piece: 'centre front',
        from: 'under-bust',
        to: 'under-bust end',
      },
    ];
  const corner = frontNecklineCorner(style, upper);
  if (style.front === 'plain') return corner;
  return [
    ...corner,
    {
      kind: 'mirror',
      name: 'under-bust seam above, at centre front',
      a: at(upper, 'under-bust', 'centre front'),
    },
    across(
      'centre front princess at the under-bust seam',
      at(upper, 'princess upper', 'under-bust'),
      at('centre front', 'princess', 'under-bust'),
    ),
  ];
}

/** Where a front neckline that does not run on to the shoulder turns up to it. */
function frontNecklineCorner(style: Style, upper: string): readonly Join[] {
  if (style.shoulder === 'strap') return [];
  if (style.princess.front === 'neckline')
    return [
      {
        ...across(
          'neckline at the front princess seam',
          at('side front', 'neckline side', 'princess upper'),
          at(upper, 'neckline', 'princess upper'),
        ),
        turns: true,
      },
    ];
  return hasNoCorner(style)
    ? []
    : [
        {
          kind: 'along',
          name: 'front neckline at its corner',
          turns: true,
          piece: upper,
          from: 'neckline',
          to: 'neckline side',
        },
      ];
}

const waistJoins: readonly Join[] = [
  across(
    'waist at the front princess seam',
    at('side front', 'waist', 'princess lower'),
    at('centre front', 'waist', 'princess'),
  ),
  across('waist at the side seam', at('side front', 'waist', 'side'), at('side back', 'waist', 'side')),
  across(
    'waist at the back princess seam',
    at('side back', 'waist', 'princess'),
    at('centre back', 'waist', 'princess'),
  ),
  { kind: 'mirror', name: 'waist at centre front', a: at('centre front', 'waist', 'centre front') },
  { kind: 'mirror', name: 'waist at centre back', a: at('centre back', 'waist', 'centre back') },
];
