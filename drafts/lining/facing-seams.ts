import type { Join, Seam } from '../../engine/pattern/garment.ts';
import type { Piece } from '../../engine/pattern/piece.ts';
import { edge, plainSeam } from '../seams.ts';
import type { BodiceSetting } from './inside.ts';
import { atCentreBack, fell, toBodice } from './lining-seams.ts';

/** How the facings are sewn: to each other, and to the edges that they face. */
export function facingSeams(pieces: readonly Piece[], { sleeves, opening }: BodiceSetting): readonly Seam[] {
  const sewn = toBodice(pieces);
  const neck = 'back neck facing';
  const armhole = (which: 'front' | 'back'): readonly Seam[] => {
    const facing = `${which} armhole facing`;
    const panel = `side ${which}`;
    return [
      sewn(`facing, ${which} armhole`, [facing, 'armhole upper'], [panel, 'armhole upper']),
      sewn(`facing, ${which} underarm`, [facing, 'armhole underarm'], [panel, 'armhole underarm']),
      fell(sewn(`facing, ${which} strap`, [facing, 'strap'], [panel, 'strap'])),
    ];
  };
  return [
    sewn('facing, neckline', [neck, 'neckline'], ['centre back', 'neckline']),
    ...(opening === 'side' ? [atCentreBack('facing, centre back', neck)] : []),
    ...(sleeves ? [] : [underarmSeam, ...armhole('front'), ...armhole('back')]),
  ];
}

const underarmSeam = plainSeam(
  'facing, side',
  [edge('front armhole facing', 'side')],
  [edge('back armhole facing', 'side')],
);

/** Armhole and inner edge of the facings run on from front to back. */
export const facingJoins = ({ sleeves }: BodiceSetting): readonly Join[] =>
  sleeves
    ? []
    : [
        ...['armhole underarm', 'inner'].map(
          (line): Join => ({
            kind: 'across',
            name: `facing, ${line} at the side seam`,
            a: { piece: 'front armhole facing', edge: line, seam: 'side' },
            b: { piece: 'back armhole facing', edge: line, seam: 'side' },
          }),
        ),
        ...['front', 'back'].map(
          (which): Join => ({
            kind: 'along',
            name: `facing, ${which} armhole at its notch`,
            piece: `${which} armhole facing`,
            from: 'armhole upper',
            to: 'armhole underarm',
          }),
        ),
      ];
