import type { EdgeRef } from '../../engine/pattern/garment.ts';
import type { Chain, ShapeClaim } from '../../engine/pattern/shape.ts';
import { armholeToShoulder, type Half, halves, panelArmhole } from '../bodice/armhole-chains.ts';

/** A cap may part from its armhole by this below the notches, mm. */
const CAP_ON_ARMHOLE = 5;

/** The tightest that an armhole or a cap may bend, mm. */
const TIGHTEST = 25;

/** How far before or behind the shoulder a cap's top may lie, mm. */
const CAP_TOP = 10;

const capUnderarm: Readonly<Record<Half, EdgeRef>> = {
  front: { piece: 'sleeve', edge: 'cap front underarm', reversed: true },
  back: { piece: 'sleeve', edge: 'cap back underarm' },
};

/** The whole cap, from back to front. */
const cap: Chain = {
  edges: ['cap back underarm', 'crown', 'cap front underarm'].map((edge) => ({ piece: 'sleeve', edge })),
};

/** What a cutter looks at where the sleeve meets its armhole. */
export const sleeveShapes: readonly ShapeClaim[] = [
  ...halves.flatMap((half): readonly ShapeClaim[] => [
    {
      kind: 'laid on',
      name: `cap on ${half} armhole`,
      a: { edges: [capUnderarm[half]] },
      b: { edges: panelArmhole(half).edges.slice(0, 1) },
      high: CAP_ON_ARMHOLE,
      outside: 'cap and armhole are equally long but not of one shape below the notch, so the sleeve drags',
    },
    {
      kind: 'tightest bend',
      name: `${half} armhole, tightest bend`,
      of: armholeToShoulder(half),
      low: TIGHTEST,
      outside: 'its allowance cannot be turned without cutting into it, and gathers crowd there',
    },
    {
      kind: 'notch height',
      name: `${half} armhole notch, of the height of the armhole`,
      of: armholeToShoulder(half),
      notch: `${half} armhole notch`,
      low: 1 / 3,
      high: 1 / 2,
      outside: 'lower, gathers begin under the arm; higher, too few are left for the shoulder',
    },
  ]),
  {
    kind: 'tightest bend',
    name: 'cap, tightest bend',
    of: cap,
    low: TIGHTEST,
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
