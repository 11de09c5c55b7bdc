import { type Side, sides } from '../../engine/body/side.ts';
import type { Garment } from '../../engine/pattern/garment.ts';
import { type Girth, type Join, piecesOfJoin, type Seam } from '../../engine/pattern/seam.ts';
import { inPairs } from './alike.ts';
import { isMirrored, sided } from './as-worn.ts';
import type { PiecesOfBoth } from './pieces-of-both.ts';

/** Something of a garment as it is on either side. */
interface Pair<T> {
  readonly right: T;
  readonly left: T;
}

/** The seams of both sides: those that sew a piece of one side are there twice, unless they belong to one side. */
export const seamsOfBoth = (right: Garment, left: Garment, both: PiecesOfBoth): readonly Seam[] =>
  inPairs(right.seams, left.seams, ({ name }) => name).flatMap((pair) => {
    const { a, b, name, side } = pair.right;
    if (![...a, ...b].some(({ piece }) => both.differ(piece))) return [pair.right];
    if (side) return [seamOn(side, pair, both)];
    return sides.map((each) => ({ ...seamOn(each, pair, both), name: sided(each, name) }));
  });

function seamOn(side: Side, pair: Pair<Seam>, { edgeOn }: PiecesOfBoth): Seam {
  const seam = pair[side];
  return {
    ...seam,
    a: seam.a.map((ref) => edgeOn(side, ref)),
    b: seam.b.map((ref) => edgeOn(side, ref)),
  };
}

/**
 * The joins of both sides: a line may turn on one of them only, and a notch of the armhole may part an edge of one of them
 * only, which has a join more then.
 */
export function joinsOfBoth(right: Garment, left: Garment, both: PiecesOfBoth): readonly Join[] {
  const [ofRight, ofLeft] = [namesOf(right.joins), namesOf(left.joins)];
  const onSide = (side: Side, join: Join): Join => ({
    ...joinOn(side, join, both),
    name: sided(side, join.name),
  });
  return [
    ...inPairs(
      right.joins.filter(({ name }) => ofLeft.has(name)),
      left.joins.filter(({ name }) => ofRight.has(name)),
      ({ name }) => name,
    ).flatMap((pair) =>
      piecesOfJoin(pair.right).some(both.differ)
        ? sides.map((side) => onSide(side, pair[side]))
        : [pair.right],
    ),
    ...right.joins.filter(({ name }) => !ofLeft.has(name)).map((join) => onSide('right', join)),
    ...left.joins.filter(({ name }) => !ofRight.has(name)).map((join) => onSide('left', join)),
  ];
}

const namesOf = (joins: readonly Join[]): ReadonlySet<string> => new Set(joins.map(({ name }) => name));

/** The edges of a mirrored piece follow each other the other way round. */
function joinOn(side: Side, join: Join, { cornerOn }: PiecesOfBoth): Join {
  if (join.kind === 'mirror') return { ...join, a: cornerOn(side, join.a) };
  if (join.kind === 'across') return { ...join, a: cornerOn(side, join.a), b: cornerOn(side, join.b) };
  const { piece, from, to } = join;
  const named = { ...join, piece: sided(side, piece) };
  return isMirrored(piece, side) ? { ...named, from: to, to: from } : named;
}

/**
 * The girths of both sides. Around the body left and right are measured each once, where before one was counted twice;
 * around an arm each has a girth of its own.
 */
export const girthsOfBoth = (right: Garment, left: Garment, both: PiecesOfBoth): readonly Girth[] =>
  inPairs(right.girths, left.girths, ({ level }) => level).flatMap((pair) => {
    const unlike = pair.right.parts.filter(({ piece }) => both.differ(piece));
    if (unlike.length === 0) return [pair.right];
    return pair.right.limb
      ? sides.map((side) => aroundLimb(pair[side], side, both))
      : [aroundBody(pair.right, both)];
  });

const aroundBody = (girth: Girth, { differ, namesOf }: PiecesOfBoth): Girth => ({
  ...girth,
  parts: girth.parts.flatMap((part) =>
    differ(part.piece) ? namesOf(part.piece).map((piece) => ({ ...part, piece, times: 1 })) : [part],
  ),
});

const aroundLimb = (girth: Girth, side: Side, { differ }: PiecesOfBoth): Girth => ({
  ...girth,
  level: sided(side, girth.level),
  parts: girth.parts.map((part) => (differ(part.piece) ? { ...part, piece: sided(side, part.piece) } : part)),
});
