import type { EdgeRef } from '../../engine/pattern/seam.ts';
import type { EdgeChain } from '../../engine/pattern/shape.ts';
import type { PanelCut } from './panel-cut.ts';

/** The halves of a bodice that a side seam parts. */
export const halves = ['front', 'back'] as const;

export type Half = (typeof halves)[number];

type Armholes = Pick<PanelCut, 'armholes'>;

const up = ({ piece, edge }: EdgeRef): EdgeRef => ({ piece, edge, reversed: true });

/** The armhole from the underarm up to the shoulder, over whatever pieces it runs. */
export const armholeToShoulder = ({ armholes }: Armholes, half: Half): EdgeChain => ({
  edges: armholes[half].edges.toReversed().map(up),
});

/** The armhole from the underarm up to its notch. */
export const armholeToNotch = ({ armholes }: Armholes, half: Half): EdgeChain => ({
  edges: armholes[half].edges
    .filter(({ flat }) => flat)
    .toReversed()
    .map(up),
});
