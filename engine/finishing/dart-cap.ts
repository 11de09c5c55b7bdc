import type { Curve } from '../geometry/curve.ts';
import { endDirection, startDirection } from '../geometry/edge.ts';
import { crossings, type StraightLine } from '../geometry/intersect.ts';
import { moved } from '../geometry/point.ts';
import { part, reversed } from '../geometry/split.ts';
import { COINCIDENCE } from '../geometry/tolerance.ts';
import { mirroredIn, type Transform, transformedCurve } from '../geometry/transform.ts';
import { headingShut, type SewnDart, shut, shutBack } from '../pattern/dart.ts';
import type { EdgeAllowance } from './edge-allowance.ts';
import { linked } from './link.ts';
import { turnCorner } from './turn-corner.ts';
import type { TurnedCorner } from './turned-corner.ts';

/**
 * The corner that the edges beside a dart make when it is sewn: turned as every other corner is, with the edge after the
 * dart laid where it then lies, and parted where the seam of the dart, prolonged, crosses the cutting line.
 */
export function turnedOverMouth(dart: SewnDart, before: EdgeAllowance, after: EdgeAllowance): TurnedCorner {
  const lay = through(shut(dart));
  const turned = turnCorner({
    at: dart.first.through,
    into: endDirection(dart.before),
    outOf: headingShut(dart, startDirection(dart.after)),
    before,
    after: { ...after, curves: lay(after.curves), parallel: lay(after.parallel) },
  });
  const whole = linked([...turned.before, ...turned.between, ...turned.after]);
  const back = through(shutBack(dart));
  const [at] = crossingsOf(whole, dart.first).toSorted((a, b) => a.along - b.along);
  if (!at) return { ...turned, after: back(turned.after) };
  return {
    before: upTo(whole, at),
    between: [],
    after: back(walkedFromEnd(upTo(walkedFromEnd(whole), flipped(whole, at)))),
  };
}

/** The cutting lines of the edges beside a dart's mouth. */
interface Beside {
  readonly before: readonly Curve[];
  readonly after: readonly Curve[];
}

/**
 * The edge of the cloth inside a dart, from its first leg's seam, prolonged, to its second's: what lies there is cut
 * straight off along the cutting line of the edge that the dart is pressed over. Where that edge is too short to
 * reach the fold, the dart is pressed over the other; where that is too, the mouth is cut straight across.
 */
export const dartCap = (dart: SewnDart, over: keyof Beside, beside: Beside): readonly Curve[] =>
  capOver(dart, over, beside) ?? capOver(dart, over === 'before' ? 'after' : 'before', beside) ?? [];

/**
 * Next to the edge that a dart is pressed over, its cloth lies face to face with it, so its own edge is the cutting
 * line mirrored in the seam; beyond its fold, which is the dart's middle line, it lies as what goes on from there does.
 */
function capOver(dart: SewnDart, over: keyof Beside, beside: Beside): readonly Curve[] | undefined {
  const away = over === 'before' ? walkedFromEnd(beside.before) : beside.after;
  const seam = over === 'before' ? dart.first : dart.second;
  const inSeam = through(mirroredIn(seam.through, moved(seam.through, seam.heading)));
  const acrossSeam = through(over === 'before' ? shutBack(dart) : shut(dart));
  const [own, other] = [inSeam(away), acrossSeam(away)].map((chain) => {
    const [at] = crossingsOf(chain, dart.middle);
    return at && upTo(chain, at);
  });
  if (!own || !other) return undefined;
  return over === 'before' ? [...own, ...walkedFromEnd(other)] : [...other, ...walkedFromEnd(own)];
}

/** A place on a chain of curves. */
interface ChainPlace {
  readonly curve: number;
  readonly t: number;
}

/** Where a chain crosses the ray along a line from the point it goes through, in order along the chain. */
const crossingsOf = (
  chain: readonly Curve[],
  ray: StraightLine,
): readonly (ChainPlace & { readonly along: number })[] =>
  chain.flatMap((curve, i) =>
    crossings(curve, ray)
      .filter(({ along }) => along >= -COINCIDENCE)
      .map(({ t, along }) => ({ curve: i, t, along })),
  );

/** The same place on the chain walked from its end. */
const flipped = (chain: readonly Curve[], { curve, t }: ChainPlace): ChainPlace => ({
  curve: chain.length - 1 - curve,
  t: 1 - t,
});

const upTo = (chain: readonly Curve[], { curve: last, t }: ChainPlace): readonly Curve[] =>
  chain.slice(0, last + 1).flatMap((curve, i) => (i < last ? [curve] : t > 0 ? [part(curve, 0, t)] : []));

const walkedFromEnd = (curves: readonly Curve[]): readonly Curve[] => curves.toReversed().map(reversed);

const through =
  (to: Transform) =>
  (curves: readonly Curve[]): readonly Curve[] =>
    curves.map((curve) => transformedCurve(curve, to));
