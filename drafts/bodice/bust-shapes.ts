import { angleOverBust } from '../../engine/body/bust.ts';
import { claim, claimAbout } from '../../engine/pattern/band-table.ts';
import type { EdgeRef } from '../../engine/pattern/seam.ts';
import type { EdgeChain, ShapeClaim } from '../../engine/pattern/shape.ts';
import type { Foundation } from '../foundation/foundation.ts';
import { bodiceBands as bands } from './bands.ts';
import { beyondChordOutside, sewnInOutside } from './outside-bands.ts';
import type { PanelCut } from './panel-cut.ts';
import type { Style } from './style.ts';

/** The princess seam from the waist up: side front, and on its other side centre front and what lies over it. */
const sidePrincess: EdgeChain = {
  edges: ['princess lower', 'princess upper'].map((name) => ({ piece: 'side front', edge: name })),
};

function centrePrincess({ front }: Style): EdgeChain {
  const over: EdgeRef =
    front === 'gathered'
      ? { piece: 'insert', edge: 'left side', reversed: true }
      : {
          piece: front === 'parted' ? 'upper centre front' : 'centre front',
          edge: 'princess upper',
          reversed: true,
        };
  return { edges: [{ piece: 'centre front', edge: 'princess', reversed: true }, over] };
}

/**
 * How far the under-bust seam lies below the bust level, mm: the mean over half the front, for from the princess seam it may
 * rise to the side seam.
 */
function underBustDepth({ levels, front: { underBust, side } }: Foundation): number {
  const [centre, seam] = [underBust.side.y - levels.bust.value, side.underBust.y - levels.bust.value];
  const sloping =
    (side.underBust.x - underBust.side.x) / (side.underBust.x - underBust.side.x + underBust.centre.x);
  return centre + (sloping * (seam - centre)) / 2;
}

/** Where the princess line is fullest, how full, and what it takes up over the bust, for bust less under-bust girth (mm). */
export function bustShapes({ plan }: PanelCut, cupDifference: number): readonly ShapeClaim[] {
  const { turned, turnedIn } = plan.lines.front;
  const depth = underBustDepth(plan.foundation);
  const asked = (angleOverBust(turned + turnedIn, cupDifference, depth) * 180) / Math.PI;
  return [
    claim(
      bands.fullest,
      { kind: 'fullest', of: sidePrincess, line: 'bust level', say: 'past level' },
      'the cloth is fullest above the breast, where it stands off, and too tight below',
    ),
    claim(
      bands.beyondChord,
      { kind: 'fullest', of: sidePrincess, line: 'bust level', say: 'beyond chord' },
      beyondChordOutside(plan),
    ),
    claimAbout(
      bands.sewnIn,
      asked,
      { kind: 'sewn-in angle', a: sidePrincess, b: centrePrincess(plan.lines.style) },
      sewnInOutside(plan),
      'angle sewn in over the bust',
    ),
  ];
}
