import type { Body } from '../../engine/body/body.ts';
import type { EdgeRef, Girth, GirthPart, Seam } from '../../engine/pattern/seam.ts';
import type { Foundation } from '../foundation/foundation.ts';
import { backwards as back, plainSeam, edge as ref } from '../seams.ts';
import { edgesOn } from './armhole-parts.ts';
import { easeLeft } from './ease-left.ts';
import type { PanelCut } from './panel-cut.ts';
import type { Style } from './style.ts';

/** What the part of a plain front over the bust is called. */
export const upperFront = ({ front }: Style): string =>
  front === 'parted' ? 'upper centre front' : 'centre front';

/** How the panels are sewn to each other. */
export function bodiceSeams({ plan }: PanelCut): readonly Seam[] {
  const { style } = plan.lines;
  return [
    plainSeam(
      'front princess, lower',
      [ref('side front', 'princess lower')],
      [back('centre front', 'princess')],
    ),
    ...(style.front === 'gathered'
      ? []
      : [
          plainSeam(
            'front princess, upper',
            [ref('side front', 'princess upper')],
            [back(upperFront(style), 'princess upper')],
          ),
        ]),
    ...(style.front === 'parted'
      ? [
          plainSeam(
            'under-bust',
            [ref('upper centre front', 'under-bust')],
            [back('centre front', 'under-bust')],
          ),
        ]
      : []),
    plainSeam('back princess', [ref('side back', 'princess')], [back('centre back', 'princess')]),
    plainSeam('side', [ref('side front', 'side')], [ref('side back', 'side')]),
    ...(style.shoulder === 'whole'
      ? [plainSeam('shoulder', shoulderOf(style, 'front'), shoulderOf(style, 'back'))]
      : []),
  ];
}

/** The shoulder of one half, from the neckline outwards, over the panels it runs across. */
function shoulderOf(style: Style, part: 'front' | 'back'): readonly EdgeRef[] {
  const centre = part === 'front' ? upperFront(style) : 'centre back';
  switch (style.princess[part]) {
    case 'neckline':
      return [ref(`side ${part}`, 'shoulder')];
    case 'shoulder':
      return [ref(centre, 'shoulder'), ref(`side ${part}`, 'shoulder')];
    case 'armhole':
      return [ref(centre, 'shoulder')];
  }
}

/** The armhole's edges as a seam walks them, from the back notch over the shoulder to the front one. */
export const armholeUpper = ({ armholes }: Pick<PanelCut, 'armholes'>): readonly EdgeRef[] => [
  ...armholes.back.edges
    .filter(({ flat }) => !flat)
    .toReversed()
    .map(({ piece, edge }) => back(piece, edge)),
  ...armholes.front.edges.filter(({ flat }) => !flat).map(({ piece, edge }) => ref(piece, edge)),
];

/** The armhole's edges below a notch, from the notch to the underarm. */
export const armholeLower = (
  { armholes }: Pick<PanelCut, 'armholes'>,
  part: 'front' | 'back',
): readonly EdgeRef[] =>
  armholes[part].edges.filter(({ flat }) => flat).map(({ piece, edge }) => ref(piece, edge));

/** The edges of a strap along the armhole, from its panel up to the shoulder. */
export const strapOuter = (
  { armholes }: Pick<PanelCut, 'armholes'>,
  part: 'front' | 'back',
): readonly EdgeRef[] =>
  edgesOn(armholes[part], `${part} strap`)
    .toReversed()
    .map(({ piece, edge }) => back(piece, edge));

const line = (piece: string, name: string): GirthPart => ({ kind: 'line', piece, line: name, times: 2 });
const edge = (piece: string, name: string): GirthPart => ({ kind: 'edge', piece, edge: name, times: 2 });

/** The girths the bodice must have, measured across its panels and the insert, left and right. */
export function bodiceGirths(body: Body, foundation: Foundation, style: Style): readonly Girth[] {
  const { bustGirth, underBustGirth, waistGirth } = body.size;
  const ease = easeLeft(foundation);
  const around = (level: string): readonly GirthPart[] =>
    ['centre back', 'side back', 'side front'].map((piece) => line(piece, level));
  return [
    {
      level: 'bust',
      body: bustGirth,
      ease: ease.bust,
      parts: [
        ...around('bust level'),
        style.front === 'gathered'
          ? { kind: 'line', piece: 'insert', line: 'bust level', times: 1 }
          : line(upperFront(style), 'bust level'),
      ],
    },
    {
      level: 'under-bust',
      body: underBustGirth,
      ease: ease.underBust,
      parts: [
        ...around('under-bust level'),
        ...(style.front === 'plain'
          ? [line('centre front', 'under-bust level')]
          : [edge('centre front', 'under-bust')]),
        ...(style.front === 'gathered' ? [edge('centre front', 'under-bust end')] : []),
      ],
    },
    {
      level: 'waist',
      body: waistGirth,
      ease: ease.waist,
      parts: ['centre back', 'side back', 'side front', 'centre front'].map((piece) => edge(piece, 'waist')),
    },
  ];
}
