import type { Piece } from '../../engine/pattern/piece.ts';
import type { EdgeRef } from '../../engine/pattern/seam.ts';
import type { PanelCut } from '../bodice/panel-cut.ts';
import { type BodiceHalf, isArmhole, isNeckline, panelsIn, parts } from './panels.ts';

/** Edges of the panels, one after the other, that lining or facing is sewn to in one go. */
export interface FacedEdges {
  readonly name: string;
  readonly part: BodiceHalf;
  readonly edges: readonly EdgeRef[];
}

/** The necklines of the panels, from the centre to the shoulder or strap; a gathered front has at most its sides. */
export const facedNecklines = (panels: readonly Piece[]): readonly FacedEdges[] =>
  parts.flatMap((part) => {
    const edges = panelsIn(part, panels).flatMap(({ name: piece, edges }) =>
      edges.filter(isNeckline).map(({ name: edge }): EdgeRef => ({ piece, edge })),
    );
    return edges.length > 0 ? [{ name: `${part} neckline`, part, edges }] : [];
  });

/** The armholes on the panels, front and back, above their notches and below. */
export const facedArmholes = (armholes: PanelCut['armholes']): readonly FacedEdges[] =>
  parts.flatMap((part) =>
    [false, true].flatMap((flat) => {
      const edges = armholes[part].edges.filter(
        (edge) => isArmhole({ name: edge.edge }) && edge.flat === flat,
      );
      const name = `${part} ${flat ? 'underarm' : 'armhole'}`;
      return edges.length > 0
        ? [{ name, part, edges: edges.map(({ piece, edge }): EdgeRef => ({ piece, edge })) }]
        : [];
    }),
  );
