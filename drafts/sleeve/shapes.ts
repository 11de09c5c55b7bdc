import type { EdgeRef } from '../../engine/pattern/garment.ts';
import type { Chain, ShapeClaim } from '../../engine/pattern/shape.ts';

/** A cap may part from its armhole by this below the notches, mm. */
const CAP_ON_ARMHOLE = 5;

/** The tightest that an armhole or a cap may bend, mm. */
const TIGHTEST = 25;

const up = (piece: string, edge: string): EdgeRef => ({ piece, edge, reversed: true });

/** The armhole from the underarm up, as far as it is sewn flat, and to the shoulder along the strap. */
const armhole = (part: 'front' | 'back'): Chain => ({
  edges: [up(`side ${part}`, 'armhole underarm'), up(`side ${part}`, 'armhole upper'), strapOuter[part]],
  to: 'shoulder',
});

const strapOuter: Readonly<Record<'front' | 'back', EdgeRef>> = {
  front: up('strap', 'outer'),
  back: { piece: 'strap', edge: 'outer' },
};

const capUnderarm: Readonly<Record<'front' | 'back', EdgeRef>> = {
  front: up('sleeve', 'cap front underarm'),
  back: { piece: 'sleeve', edge: 'cap back underarm' },
};

/** The whole cap, from back to front. */
const cap: Chain = {
  edges: ['cap back underarm', 'crown', 'cap front underarm'].map((edge) => ({ piece: 'sleeve', edge })),
};

/** What a cutter looks at where the sleeve meets its armhole. */
export const sleeveShapes: readonly ShapeClaim[] = (['front', 'back'] as const)
  .flatMap((part): readonly ShapeClaim[] => [
    {
      kind: 'laid on',
      name: `cap on ${part} armhole`,
      a: { edges: [capUnderarm[part]] },
      b: { edges: [up(`side ${part}`, 'armhole underarm')] },
      high: CAP_ON_ARMHOLE,
      outside: 'cap and armhole are equally long but not of one shape below the notch, so the sleeve drags',
    },
    {
      kind: 'tightest bend',
      name: `${part} armhole, tightest bend`,
      of: armhole(part),
      low: TIGHTEST,
      outside: 'its allowance cannot be turned without cutting into it, and gathers crowd there',
    },
  ])
  .concat({
    kind: 'tightest bend',
    name: 'cap, tightest bend',
    of: cap,
    low: TIGHTEST,
    outside: 'its allowance cannot be turned without cutting into it',
  });
