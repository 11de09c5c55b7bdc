import { COINCIDENCE } from '../../geometry/tolerance.ts';
import type { Body, MeasurementName, Sizes } from '../body.ts';
import { expectedDartLeg, frontHang, greatestBustDart, leastBustDart, underarmAboveBust } from '../bust.ts';
import { bustLevelShares, shares } from '../contradictions.ts';
import { backNeckRise } from '../neck.ts';

/** What must hold between measurements: the sum of each times its factor is not below a number, mm. */
export interface HeldLimit {
  readonly terms: readonly (readonly [MeasurementName, number])[];
  readonly least: number;
  /** What a reconciled body keeps beyond that, mm: for what is only foretold about the garment. */
  readonly beyond: number;
}

/**
 * Everything that must hold between those of a body's measurements that were taken (mm): what no body has together, and
 * what no bodice can be cut for. `size` is the body completed.
 */
export function heldLimits(taken: Sizes, size: Body['size']): readonly HeldLimit[] {
  const limits = [...shareLimits(), ...levelLimits(taken), ...dartLimits(size)];
  return limits.filter(({ terms }) => terms.every(([name]) => taken[name] !== undefined));
}

const limit = (least: number, beyond: number, ...terms: HeldLimit['terms']): HeldLimit => ({
  terms,
  least,
  beyond,
});

const shareLimits = (): readonly HeldLimit[] =>
  shares.flatMap(([name, other, least, most]) => [
    limit(0, 0, [name, 1], [other, -least]),
    limit(0, 0, [other, most], [name, -1]),
  ]);

/** Bust level below the underarm and above the waist. */
function levelLimits({ scyeDepth }: Sizes): readonly HeldLimit[] {
  const bustLevel = [
    ['backNeckPointToWaist', 1],
    ['neckShoulderPointToWaist', -1],
    ['neckShoulderPointToBustPoint', 1],
  ] as const;
  const aboveWaist = limit(
    0,
    0,
    ['neckShoulderPointToWaist', 1],
    ['neckShoulderPointToBustPoint', -1],
    ['backNeckPointToWaist', -bustLevelShares.aboveWaist],
  );
  if (scyeDepth !== undefined)
    return [
      limit(0, 0, ...bustLevel, ['scyeDepth', -bustLevelShares.scyeDepth]),
      limit(underarmAboveBust, 0, ...bustLevel, ['scyeDepth', -1]),
      aboveWaist,
    ];
  const [back, ...front] = bustLevel;
  return [limit(0, 0, [back[0], 1 - bustLevelShares.backLength], ...front), aboveWaist];
}

/** How far the bust dart's leg may be from what the bust foretells, as a share of it; judgement. */
const legDoubt = 0.2;

/** The front long enough over the bust for a dart, and not too long for one. */
function dartLimits({ bustGirth, bustPointWidth, neckBaseGirth }: Body['size']): readonly HeldLimit[] {
  const leg = expectedDartLeg(bustGirth, bustPointWidth);
  const intake = (degrees: number): number => 2 * leg * Math.sin((degrees * Math.PI) / 360);
  const [least, most] = [intake(leastBustDart), intake(greatestBustDart)];
  const equal = backNeckRise(neckBaseGirth) - frontHang;
  const doubted = (ofIntake: number): number => 2 * legDoubt * ofIntake;
  return [
    limit(
      equal + (1 - legDoubt) * least,
      doubted(least),
      ['neckShoulderPointToWaist', 1],
      ['backNeckPointToWaist', -1],
    ),
    limit(
      -(equal + (1 + legDoubt) * most),
      doubted(most),
      ['backNeckPointToWaist', 1],
      ['neckShoulderPointToWaist', -1],
    ),
  ];
}

/** By how much a limit is missed, mm; nothing where it holds. */
export function missOf({ terms, least }: HeldLimit, sizes: Sizes): number {
  const sum = terms.reduce((total, [name, factor]) => total + factor * (sizes[name] ?? 0), 0);
  return Math.max(0, least - COINCIDENCE - sum);
}

/** The limits that do not hold. */
export const brokenLimits = (limits: readonly HeldLimit[], sizes: Sizes): readonly HeldLimit[] =>
  limits.filter((held) => missOf(held, sizes) > 0);

/** How much of a measurement there is in what a limit holds. */
export const factorIn = ({ terms }: HeldLimit, name: MeasurementName): number =>
  terms.reduce((sum, [each, factor]) => sum + (each === name ? factor : 0), 0);
