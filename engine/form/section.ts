import type { Frame } from './frame/frame.ts';
import type { Swelling } from './frame/swellings.ts';
import { at } from './profile.ts';

/** Steps from centre front by the side to centre back. */
export const HALF = 60;

/** Points of half a section, ends included. */
export const COLUMNS = HALF + 1;

/** The column at the side. */
export const SIDE = HALF / 2;

/** The angle of a column: a quarter turn at the centre front, 0 at the side, minus a quarter at the centre back. */
export const angleOf = (column: number): number => Math.PI / 2 - (column * Math.PI) / HALF;

const angles = Float64Array.from({ length: COLUMNS }, (_, j) => angleOf(j));
const cosines = Float64Array.from({ length: COLUMNS }, (_, j) =>
  j === 0 || j === HALF ? 0 : Math.cos(angleOf(j)),
);
const sines = Float64Array.from({ length: COLUMNS }, (_, j) => Math.sin(angleOf(j)));
/** Powers for which the reach of every column is kept, and the step between them. */
const [leastPower, mostPower, powerStep] = [1.5, 2.9, 0.01];

/** The distance from the centre at which a superellipse of half axes 1 meets a direction. */
const reachAt = (c: number, s: number, power: number): number =>
  (Math.abs(c) ** power + Math.abs(s) ** power) ** (-1 / power);

const reaches: readonly Float64Array[] = Array.from(
  { length: Math.round((mostPower - leastPower) / powerStep) + 1 },
  (_, k) =>
    Float64Array.from({ length: COLUMNS }, (_, j) =>
      reachAt(cosines[j] as number, sines[j] as number, leastPower + k * powerStep),
    ),
);

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
  const { half, front, back, side, sideHeight, tilt, bow } = figures;
  // A section that lies level meets only what stands out at its height.
  const level = tilt === 0 && bow === 0;
  const meets = ({ height, up, down }: Swelling): boolean =>
    !level || (place < height + up && place > height - down);
  const { breast } = frame;
  const breastMet = meets(breast);
  const behind = frame.behind.filter(meets);
  for (let quarter = 0; quarter < 2; quarter++) {
    const ahead = quarter === 0;
    const [k, t] = between(ahead ? figures.frontRoundness : figures.backRoundness);
    const [below, above] = [reaches[k] as Float64Array, reaches[k + 1] as Float64Array];
    const depth = ahead ? front - side : side - back;
    for (let j = ahead ? 0 : SIDE + 1; j < (ahead ? SIDE + 1 : COLUMNS); j++) {
      // Straight between kept powers: within a thousandth of a mm.
      const reach = (1 - t) * (below[j] as number) + t * (above[j] as number);
      const along = (sines[j] as number) * reach;
      const y = sideHeight + along * (tilt + along * bow);
      const angle = angles[j] as number;
      let x = half * (cosines[j] as number) * reach;
      let z = side + along * depth;
      if (ahead && breastMet) {
        const out = swell(breast, angle, y);
        x += out * breast.left;
        z += out * breast.forward;
      } else if (!ahead)
        for (const swelling of behind) {
          const out = swell(swelling, angle, y);
          x += out * swelling.left;
          z += out * swelling.forward;
        }
      const to = offset + 3 * j;
      into[to] = x;
      into[to + 1] = y;
      into[to + 2] = z;
    }
  }
}

/** The kept power below one, and how far toward the next it lies. */
function between(power: number): readonly [number, number] {
  const at = (power - leastPower) / powerStep;
  const k = Math.min(Math.max(Math.floor(at), 0), reaches.length - 2);
  return [k, at - k];
}

/** One point of a section, anywhere on its front half. */
export function frontPoint(frame: Frame, place: number, angle: number): readonly [number, number, number] {
  const { half, front, side, sideHeight, tilt, bow, frontRoundness } = figuresAt(frame, place);
  const [c, s] = [Math.max(0, Math.cos(angle)), Math.sin(angle)];
  const reach = reachAt(c, s, frontRoundness);
  const along = s * reach;
  const y = sideHeight + along * (tilt + along * bow);
  const out = swell(frame.breast, angle, y);
  return [
    half * c * reach + out * frame.breast.left,
    y,
    side + along * (front - side) + out * frame.breast.forward,
  ];
}

/** How far something stands out at an angle of the section and a height, mm: smooth, nothing beyond its edge. */
function swell(swelling: Swelling, angle: number, y: number): number {
  const { up, down, fall, apex, height, turn, inward, outward, prominence } = swelling;
  const v = y - height;
  if (v >= up || v <= -down) return 0;
  const u = (angle - apex) * turn;
  const towardCentre = apex > 0 ? u > 0 : u < 0;
  const [su, sv] = [u / (towardCentre ? inward : outward), v / (v > 0 ? up : down)];
  const squared = su * su + sv * sv;
  if (squared >= 1) return 0;
  const upright = squared > 0 ? (sv * sv) / squared : 0;
  const power = fall.aside + ((v > 0 ? fall.above : fall.below) - fall.aside) * upright;
  return prominence * Math.exp(power * Math.log(1 - squared));
}
