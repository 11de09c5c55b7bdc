import type { Join } from '../../engine/pattern/seam.ts';
import type { ArmholeHalf } from './armhole-parts.ts';
import { upperFront } from './bodice-seams.ts';
import { across, at, turning } from './corners.ts';
import { hasNoCorner } from './front-neckline.ts';
import type { PanelCut } from './panel-cut.ts';
import { turnsOnOneSide } from './shoulder-line.ts';
import type { StyleLines } from './style-lines.ts';

/** Along one half of the armhole: at the notch, and over the seam that it crosses. */
export function armholeJoins(half: ArmholeHalf, part: 'front' | 'back'): readonly Join[] {
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
export function shoulderJoins(lines: StyleLines, armholes: PanelCut['armholes']): readonly Join[] {
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
