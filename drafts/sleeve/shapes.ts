import { claim } from '../../engine/pattern/band-table.ts';
import type { EdgeRef } from '../../engine/pattern/seam.ts';
import type { EdgeChain, ShapeClaim } from '../../engine/pattern/shape.ts';
import { armholeToNotch, type Half, halves } from '../bodice/armhole-chains.ts';
import type { PanelCut } from '../bodice/panel-cut.ts';
import { sleeveBands as bands } from './bands.ts';

const capUnderarm: Readonly<Record<Half, EdgeRef>> = {
  front: { piece: 'sleeve', edge: 'cap front underarm', reversed: true },
  back: { piece: 'sleeve', edge: 'cap back underarm' },
};

/** The whole cap, from back to front. */
const cap: EdgeChain = {
  edges: ['cap back underarm', 'crown', 'cap front underarm'].map((edge) => ({ piece: 'sleeve', edge })),
};

/** What a cutter looks at where the sleeve meets its armhole. */
export const sleeveShapes = (cut: PanelCut): readonly ShapeClaim[] => [
  ...halves.map(
    (half): ShapeClaim =>
      claim(
        bands.capOnArmhole,
        { kind: 'laid on', a: { edges: [capUnderarm[half]] }, b: armholeToNotch(cut, half) },
        'cap and armhole are equally long but not of one shape below the notch, so the sleeve drags',
        { name: `cap on ${half} armhole` },
      ),
  ),
  claim(
    bands.capBend,
    { kind: 'tightest bend', of: cap },
    'its allowance cannot be turned without cutting into it',
  ),
  ...(['top', 'grain'] as const).map(
    (say): ShapeClaim =>
      claim(
        bands.capTop,
        { kind: 'cap top', of: cap, notch: 'shoulder', say },
        'the sleeve hangs forward or back of the arm',
        { name: `${say === 'top' ? 'cap top' : 'sleeve grain'} in front of the shoulder notch` },
      ),
  ),
];
