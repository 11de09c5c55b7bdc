import { at } from '../profile.ts';
import type { Unknowns } from '../unknowns.ts';
import type { FrameLevels } from './levels.ts';
import type { NeckAndShoulder } from './neck-and-shoulder.ts';
import type { Outlines } from './outlines.ts';

/**
 * Something that stands out from the section on the left side; the right is its mirror image. Lengths in mm, `turn` of them
 * for each radian of the section, angles in radians.
 */
export interface Swelling {
  readonly prominence: number;
  /** Where on the section it stands out most: a quarter turn is the centre front, 0 the side. */
  readonly apex: number;
  readonly height: number;
  readonly turn: number;
  /** How far it reaches toward the centre, toward the side, up and down. */
  readonly inward: number;
  readonly outward: number;
  readonly up: number;
  readonly down: number;
  /** How it falls off toward its edge: 1 round with a crease, 2 and more soft. */
  readonly fall: { readonly above: number; readonly below: number; readonly aside: number };
  /** The way it stands out: to the wearer's left, and forward. */
  readonly left: number;
  readonly forward: number;
}

/** The tip points outward by so much; judged from views from above. */
const outwardAngle = (13 * Math.PI) / 180;

/**
 * How a breast falls off above, below and aside: the first of each pair where it hardly stands out, the second where it
 * stands out by `full` mm and is rounder everywhere. Judged by eye.
 */
const falls = { above: [2.2, 1.35], below: [1.4, 0.85], aside: [1.7, 0.95] } as const;
const full = 110;

/** Seat and shoulder blades stand out by shares of the depths there; judged by eye. */
const [seatShare, bladeShare] = [0.07, 0.035];

/** What falls off softly on all sides. */
const soft = { above: 2, below: 2, aside: 1.6 } as const;

/** mm for each radian of the section at a place. */
const turnAt = ({ halfBreadth, front, back }: Outlines, place: number): number =>
  Math.hypot(at(halfBreadth, place), (at(front, place) - at(back, place)) / 2) / Math.SQRT2;

/** The left breast: from the under-bust up toward the neck, rounder the further it stands out. */
export function breastOf(
  u: Unknowns,
  { bust, underBust }: FrameLevels,
  outlines: Outlines,
  { frontNeckHeight }: NeckAndShoulder,
): Swelling {
  const turn = turnAt(outlines, bust);
  const fullness = Math.min(1, u.prominence / full);
  const rounded = ([slight, round]: readonly [number, number]): number =>
    slight + fullness * (round - slight);
  return {
    prominence: u.prominence,
    apex: u.apex,
    height: bust,
    turn,
    inward: Math.max(30, (Math.PI / 2 - u.apex) * turn - 5),
    outward: (u.apex + 0.12) * turn,
    up: Math.max(60, Math.min(frontNeckHeight - bust - 10, 92 + 0.3 * u.prominence)),
    down: bust - underBust,
    fall: { above: rounded(falls.above), below: rounded(falls.below), aside: rounded(falls.aside) },
    left: Math.sin(outwardAngle),
    forward: Math.cos(outwardAngle),
  };
}

/** The left seat. */
export function seatOf(u: Unknowns, { hip }: FrameLevels, outlines: Outlines, crotch: number): Swelling {
  const turn = turnAt(outlines, hip);
  return {
    prominence: seatShare * u.hipDepth,
    apex: -0.98,
    height: hip - 6,
    turn,
    inward: (Math.PI / 2 - 0.98) * turn - 2,
    outward: 0.95 * turn,
    up: Math.max(40, 0.62 * u.hipFall),
    down: hip - crotch + 45,
    fall: { ...soft, below: 1.5 },
    left: 0.1,
    forward: -1,
  };
}

/** The left shoulder blade. */
export function bladeOf(
  u: Unknowns,
  { underarm, waist }: FrameLevels,
  outlines: Outlines,
  { neckHeight }: NeckAndShoulder,
): Swelling {
  const turn = turnAt(outlines, underarm);
  const height = underarm + 0.12 * (neckHeight - underarm);
  return {
    prominence: bladeShare * u.chestDepth,
    apex: -1.0,
    height,
    turn,
    inward: (Math.PI / 2 - 1.0) * turn - 2,
    outward: 0.8 * turn,
    up: 0.6 * (neckHeight - height),
    down: Math.max(40, 0.55 * (height - waist)),
    fall: soft,
    left: 0.15,
    forward: -1,
  };
}
