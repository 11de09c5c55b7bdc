import type { EdgeRef } from '../../engine/pattern/garment.ts';
import type { Chain, ShapeClaim } from '../../engine/pattern/shape.ts';
import { armholeLower } from '../bodice/bodice-seams.ts';
import type { PanelCut } from '../bodice/panel-cut.ts';

/** A cap may part from its armhole by this below the notches, mm. */
const CAP_ON_ARMHOLE = 5;

/** The tightest that an armhole or a cap may bend, mm. */
const TIGHTEST = 25;

const up = (piece: string, edge: string): EdgeRef => ({ piece, edge, reversed: true });

const capUnderarm: Readonly<Record<'front' | 'back', EdgeRef>> = {
  front: up('sleeve', 'cap front underarm'),
  back: { piece: 'sleeve', edge: 'cap back underarm' },
};

/** The whole cap, from back to front. */
const cap: Chain = {
  edges: ['cap back underarm', 'crown', 'cap front underarm'].map((edge) => ({ piece: 'sleeve', edge })),
};

/** What a cutter looks at where the sleeve meets its armhole. */
export const sleeveShapes = (cut: PanelCut): readonly ShapeClaim[] => [
  ...(['front', 'back'] as const).map(
    (part): ShapeClaim => ({
      kind: 'laid on',
      name: `cap on ${part} armhole`,
      a: { edges: [capUnderarm[part]] },
      b: {
        edges: armholeLower(cut, part)
          .toReversed()
          .map(({ piece, edge }) => up(piece, edge)),
      },
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
];
