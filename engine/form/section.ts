import type { Breast, Frame } from './frame.ts';
import { at } from './profile.ts';

/** Steps from centre front by the side to centre back. */
export const HALF = 60;

/** Points of half a section, ends included. */
export const COLUMNS = HALF + 1;

/** The column at the side. */
export const SIDE = HALF / 2;

/** The angle of a column: a quarter turn at the centre front, 0 at the side, minus a quarter at the centre back. */
export const angleOf = (column: number): number => Math.PI / 2 - (column * Math.PI) / HALF;

const cosines = Float64Array.from({ length: COLUMNS }, (_, j) => Math.max(0, Math.cos(angleOf(j))));
const sines = Float64Array.from({ length: COLUMNS }, (_, j) => Math.sin(angleOf(j)));
const logCosines = cosines.map((c) => Math.log(Math.max(c, 1e-12)));
const logSines = sines.map((s) => Math.log(Math.max(Math.abs(s), 1e-12)));

/** A section's figures at one place of the frame. */
interface Figures {
  readonly half: number;
  readonly front: number;
  readonly back: number;
  readonly side: number;
  readonly frontRoundness: number;
  readonly backRoundness: number;
  readonly sideHeight: number;
  /** How far the section rises toward the front, and how far both ends lie above the sides. */
  readonly tilt: number;
  readonly bow: number;
}

function figuresAt(frame: Frame, place: number): Figures {
  const { underarm } = frame.levels;
  const level = place <= underarm;
  const side = level ? place : at(frame.sideHeight, place);
  const [front, back] = level ? [place, place] : [at(frame.frontHeight, place), at(frame.backHeight, place)];
  return {
    half: at(frame.halfBreadth, place),
    front: at(frame.front, place),
    back: at(frame.back, place),
    side: at(frame.side, place),
    frontRoundness: at(frame.frontRoundness, place),
    backRoundness: at(frame.backRoundness, place),
    sideHeight: side,
    tilt: (front - back) / 2,
    bow: (front + back) / 2 - side,
  };
}

/**
 * Writes the left half of the section at a place of the frame, from centre front to centre back, three numbers a column.
 * Each quarter is a superellipse (G. Lame; |x/a|^n + |z/b|^n = 1) of its own depth and roundness; they meet with one
 * tangent. The breast stands on it.
 */
export function writeSection(frame: Frame, place: number, into: Float64Array, offset: number): void {
  const figures = figuresAt(frame, place);
  const frontPower = figures.frontRoundness;
  const backPower = figures.backRoundness;
  for (let j = 0; j < COLUMNS; j++) {
    const power = j <= SIDE ? frontPower : backPower;
    const reach =
      1 /
      Math.exp(
        Math.log(Math.exp(power * (logCosines[j] as number)) + Math.exp(power * (logSines[j] as number))) / power,
      );
    writePoint(frame.breast, figures, angleOf(j), (cosines[j] as number) * reach, (sines[j] as number) * reach, into, offset + 3 * j);
  }
}

function writePoint(
  breast: Breast,
  { half, front, back, side, sideHeight, tilt, bow }: Figures,
  angle: number,
  across: number,
  along: number,
  into: Float64Array,
  offset: number,
): void {
  const y = sideHeight + along * (tilt + along * bow);
  const out = swell(breast, angle, y);
  into[offset] = half * across + out * Math.sin(breast.outwardAngle);
  into[offset + 1] = y;
  into[offset + 2] = side + along * (along > 0 ? front - side : side - back) + out * Math.cos(breast.outwardAngle);
}

/** One point of a section, at any angle. */
export function sectionPoint(frame: Frame, place: number, angle: number): readonly [number, number, number] {
  const figures = figuresAt(frame, place);
  const [c, s] = [Math.max(0, Math.cos(angle)), Math.sin(angle)];
  const power = s > 0 ? figures.frontRoundness : figures.backRoundness;
  const reach = (c ** power + Math.abs(s) ** power) ** (-1 / power);
  const into = new Float64Array(3);
  writePoint(frame.breast, figures, angle, c * reach, s * reach, into, 0);
  return [into[0] as number, into[1] as number, into[2] as number];
}

/**
 * How the breast falls off: below to a crease, above to a slope, to the sides between the two; the first of each pair for
 * a breast that hardly stands out, the second for one that stands out by `full` mm and is rounder everywhere. Judged by eye.
 */
const [fallBelow, fallAbove, fallAside] = [
  [1.4, 0.85],
  [2.2, 1.35],
  [1.7, 0.95],
] as const;
const full = 110;

/** How far the breast stands out from the ribs at an angle of the section and a height, mm: smooth, nothing beyond its edge. */
export function swell(breast: Breast, angle: number, y: number): number {
  const v = y - breast.height;
  if (v >= breast.up || v <= -breast.down) return 0;
  const u = (breast.apex - angle) * breast.turn;
  const [su, sv] = [u / (u > 0 ? breast.outward : breast.inward), v / (v > 0 ? breast.up : breast.down)];
  const squared = su * su + sv * sv;
  if (squared >= 1) return 0;
  const upright = squared > 0 ? (sv * sv) / squared : 0;
  const fullness = Math.min(1, breast.prominence / full);
  const fall = ([slight, round]: readonly [number, number]): number => slight + fullness * (round - slight);
  const aside = fall(fallAside);
  const power = aside + (fall(v > 0 ? fallAbove : fallBelow) - aside) * upright;
  return breast.prominence * (1 - squared) ** power;
}
