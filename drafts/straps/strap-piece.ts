import { point } from '../../engine/geometry/point.ts';
import type { Piece } from '../../engine/pattern/piece.ts';
import type { BodiceAllowances } from '../allowances.ts';
import { grainline } from '../grainline.ts';
import { seamEdge, straight } from '../piece-edges.ts';
import { sewingRank } from '../sewing-rank.ts';

/** What a strap is drawn from. */
export interface StrapSize {
  /** Finished width, mm. */
  readonly width: number;
  /** From the back panel up to the shoulder line, and from there down to the side front, mm. */
  readonly back: number;
  readonly front: number;
  readonly allowance: BodiceAllowances;
  /** Whether a sleeve is sewn to its long edges; else it is turned to a tube before its ends are sewn. */
  readonly sleeves: boolean;
}

/**
 * Cuts a strap double width, to be folded lengthwise: the fold lies at the neck, both long edges at the armhole,
 * where a sleeve is sewn to them. Drawn upright with the back end on top and the outer edge on the right.
 */
export function strapPiece(size: StrapSize): Piece {
  const length = size.back + size.front;
  const corner = (across: number, down: number) => point(across * size.width, down * length);
  const { strap } = sewingRank;
  const edge = (name: string, from: ReturnType<typeof corner>, to: ReturnType<typeof corner>, rank: number) =>
    seamEdge(name, straight(from, to), rank === strap ? size.allowance.seam : size.allowance.armhole, rank);
  const long = size.sleeves ? sewingRank.armhole : sewingRank.strapTube;
  return {
    name: 'strap',
    number: 6,
    edges: [
      edge('back end facing', corner(-1, 0), corner(0, 0), strap),
      edge('back end', corner(0, 0), corner(1, 0), strap),
      edge('outer', corner(1, 0), corner(1, 1), long),
      edge('front end', corner(1, 1), corner(0, 1), strap),
      edge('front end facing', corner(0, 1), corner(-1, 1), strap),
      edge('outer facing', corner(-1, 1), corner(-1, 0), long),
    ],
    grain: grainline(corner(0.5, 0.5), corner(0.5, 1)),
    notches: [
      { name: 'strap fold, back', edge: 'back end', at: 0, mark: 'fold' },
      { name: 'strap fold, front', edge: 'front end', at: size.width, mark: 'fold' },
      { name: 'strap end', edge: 'back end', at: size.width / 2, mark: 'double' },
      { name: 'strap end', edge: 'front end', at: size.width / 2, mark: 'single' },
      { name: 'shoulder', edge: 'outer', at: size.back, mark: 'level' },
      { name: 'shoulder', edge: 'outer facing', at: size.front, mark: 'level' },
    ],
    lines: [{ name: 'fold', kind: 'fold', curves: straight(corner(0, 0), corner(0, 1)) }],
    marks: [],
    cut: [{ cloth: 'self', count: 2, onFold: false, pair: false }],
  };
}
