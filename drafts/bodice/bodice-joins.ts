import type { Join, SeamCorner } from '../../engine/pattern/seam.ts';
import type { ArmholeHalf } from './armhole-parts.ts';
import { upperFront } from './bodice-seams.ts';
import { hasNoCorner } from './front-neckline.ts';
import type { PanelCut } from './panel-cut.ts';
import { turnsOnOneSide } from './shoulder-line.ts';
import type { Style } from './style.ts';
import type { StyleLines } from './style-lines.ts';

const at = (piece: string, edge: string, seam: string): SeamCorner => ({ piece, edge, seam });

const across = (name: string, a: SeamCorner, b: SeamCorner): Join => ({ kind: 'across', name, a, b });

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

/** The mark of a join whose line turns by design. */
const turning = (turns: boolean): { readonly turns?: true } => (turns ? { turns } : {});

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

/** Along one half of the armhole: at the notch, and over the seam that it crosses. */
function armholeJoins(half: ArmholeHalf, part: 'front' | 'back'): readonly Join[] {
  return half.edges.slice(1).map((edge, i): Join => {
    const before = half.edges[i] ?? edge;
    if (before.piece === edge.piece)
      return {
        kind: 'along',
        name: `${part} armhole at its notch`,
        piece: edge.piece,
        from: before.edge,
        to: edge.edge,
      };
    if (before.edge.startsWith('outer'))
      return across(
        `armhole at the ${part} strap`,
        at(edge.piece, edge.edge, 'strap'),
        at(before.piece, before.edge, `${part} end`),
      );
    const princess = part === 'front' ? 'princess upper' : 'princess';
    return across(
      `armhole at the ${part} princess seam`,
      at(edge.piece, edge.edge, princess),
      at(before.piece, before.edge, princess),
    );
  });
}

/** Armhole and neckline run on over the shoulder seam, and the shoulder over a princess seam that begins there. */
function shoulderJoins(lines: StyleLines, armholes: PanelCut['armholes']): readonly Join[] {
  const { style } = lines;
  const [front, behind] = [armholes.front.edges[0], armholes.back.edges[0]];
  const frontPiece = style.princess.front === 'neckline' ? 'side front' : upperFront(style);
  const neckline = style.princess.front === 'neckline' || !hasNoCorner(style) ? 'neckline side' : 'neckline';
  return [
    ...(front && behind
      ? [
          across(
            'armhole at the shoulder',
            at(front.piece, front.edge, 'shoulder'),
            at(behind.piece, behind.edge, 'shoulder'),
          ),
        ]
      : []),
    ...(['front', 'back'] as const).flatMap((part): Join[] => {
      if (style.princess[part] !== 'shoulder') return [];
      const princess = part === 'front' ? 'princess upper' : 'princess';
      const centre = part === 'front' ? upperFront(style) : 'centre back';
      return [
        {
          ...across(
            `${part} shoulder at the princess seam`,
            at(`side ${part}`, 'shoulder', princess),
            at(centre, 'shoulder', princess),
          ),
          ...turning(turnsOnOneSide(lines[part])),
        },
      ];
    }),
    across(
      'neckline at the shoulder',
      at(frontPiece, neckline, 'shoulder'),
      at('centre back', 'neckline', 'shoulder'),
    ),
  ];
}
