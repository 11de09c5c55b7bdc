import type { EdgeRef } from '../../engine/pattern/garment.ts';
import type { Chain } from '../../engine/pattern/shape.ts';

/** The halves of a bodice that a side seam parts. */
export const halves = ['front', 'back'] as const;

export type Half = (typeof halves)[number];

const up = (piece: string, edge: string): EdgeRef => ({ piece, edge, reversed: true });

const strapOuter: Readonly<Record<Half, EdgeRef>> = {
  front: up('strap', 'outer'),
  back: { piece: 'strap', edge: 'outer' },
};

/** The armhole on the panel, from the underarm up. */
export const panelArmhole = (half: Half): Chain => ({
  edges: [up(`side ${half}`, 'armhole underarm'), up(`side ${half}`, 'armhole upper')],
});

/** The armhole from the underarm along panel and strap to the shoulder. */
export const armholeToShoulder = (half: Half): Chain => ({
  edges: [...panelArmhole(half).edges, strapOuter[half]],
  to: 'shoulder',
});
