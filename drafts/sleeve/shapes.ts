import type { EdgeRef } from '../../engine/pattern/seam.ts';
import type { EdgeChain, ShapeClaim } from '../../engine/pattern/shape.ts';
import { armholeToNotch, type Half, halves } from '../bodice/armhole-chains.ts';
import type { PanelCut } from '../bodice/panel-cut.ts';

/** A cap may part from its armhole by this below the notches, mm. */
const CAP_ON_ARMHOLE = 5;

/** The tightest that a cap may bend, mm. */
const TIGHTEST = 25;

/** How far before or behind the shoulder a cap's top may lie, mm. */
const CAP_TOP = 10;

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
    (half): ShapeClaim => ({
      kind: 'laid on',
      name: `cap on ${half} armhole`,
      a: { edges: [capUnderarm[half]] },
      b: armholeToNotch(cut, half),
      high: CAP_ON_ARMHOLE,
      bound: true,
      outside: 'cap and armhole are equally long but not of one shape below the notch, so the sleeve drags',
    }),
  ),
  {
    kind: 'tightest bend',
    name: 'cap, tightest bend',
    of: cap,
    low: TIGHTEST,
    bound: true,
    outside: 'its allowance cannot be turned without cutting into it',
  },
  ...(['top', 'grain'] as const).map(
    (say): ShapeClaim => ({
      kind: 'cap top',
      name: `${say === 'top' ? 'cap top' : 'sleeve grain'} in front of the shoulder notch`,
      of: cap,
      notch: 'shoulder',
      say,
      low: -CAP_TOP,
      high: CAP_TOP,
      outside: 'the sleeve hangs forward or back of the arm',
    }),
  ),
];
