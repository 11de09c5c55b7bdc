import { IN_SPACE } from '../geometry/tolerance.ts';
import type { Place } from './form.ts';
import type { Frame } from './frame/frame.ts';
import { at } from './profile.ts';
import { frontMeets, planeCut, ringPoint } from './ring-cuts.ts';
import type { Rings } from './rings.ts';
import { COLUMNS, frontPoint, HALF, SIDE } from './section.ts';
import { add, emptyCut, over, type Path, round, type SectionCut } from './taut.ts';

/** A level tape at a ring. */
export function girthAt(rings: Rings, ring: number): Path {
  const cut = emptyCut();
  for (let j = 0; j < COLUMNS; j++) {
    const [x, y, z] = ringPoint(rings, ring, j);
    add(cut, x, z, x, y, z);
  }
  return round(cut);
}

/** How far above the bust points, as a share of the breast's upper part, a tape lies that is said to lie above the breasts. */
const aboveBreast = 0.6;

/** High under the arms and above the breasts: through the underarm points, rising forward only as far as it must. */
export function upperChest(frame: Frame, rings: Rings): Path {
  const { levels, breast } = frame;
  const side = at(frame.side, levels.underarm);
  const front = at(frame.front, levels.underarm);
  const rise = Math.max(0, breast.height + aboveBreast * breast.up - levels.underarm);
  const pitch = Math.min(0.45, rise / Math.max(20, front - side));
  return round(planeCut(rings, [rings.index.waist, rings.index.neck], levels.underarm, pitch, side));
}

/** Round the base of the neck: the section there is hollow nowhere. */
export function neckBase(rings: Rings): Path {
  const points: number[] = [];
  let length = 0;
  let before: Place | undefined;
  for (let j = 0; j < COLUMNS; j++) {
    const now = ringPoint(rings, rings.index.neck, j);
    if (before) length += Math.hypot(now[0] - before[0], now[1] - before[1], now[2] - before[2]);
    points.push(...now);
    before = now;
  }
  return { points, length: 2 * length, round: true };
}

/** Down the spine from the back neck point to a height. */
export function downTheBack(rings: Rings, height: number): Path {
  const cut = emptyCut();
  for (let i = rings.index.neck; i >= 0; i--) {
    const [x, y, z] = ringPoint(rings, i, HALF);
    if (y < height - IN_SPACE) {
      const before = cut.space.length - 3;
      const [y0, z0] = [cut.space[before + 1] as number, cut.space[before + 2] as number];
      if (y0 - height > IN_SPACE) {
        const t = (y0 - height) / (y0 - y);
        const zt = z0 + t * (z - z0);
        add(cut, -height, -zt, 0, height, zt);
      }
      break;
    }
    add(cut, -y, -z, x, y, z);
  }
  return over(cut);
}

/** Along the side from the waist to the hip; where the side runs forward or back the tape goes with it. */
export function downTheSide(frame: Frame, rings: Rings): Path {
  const cut = emptyCut();
  let along = 0;
  let before: Place | undefined;
  for (let i = rings.index.waist; i >= rings.index.hip; i--) {
    const y = rings.places[i] as number;
    const now: Place = [at(frame.halfBreadth, y), y, at(frame.side, y)];
    if (before) along += Math.hypot(now[1] - before[1], now[2] - before[2]);
    add(cut, along, now[0], ...now);
    before = now;
  }
  const { points } = over(cut);
  let length = 0;
  for (let i = 3; i < points.length; i += 3)
    length += Math.hypot(
      (points[i] as number) - (points[i - 3] as number),
      (points[i + 1] as number) - (points[i - 2] as number),
      (points[i + 2] as number) - (points[i - 1] as number),
    );
  return { points, length, round: false };
}

export const bustPoint = (frame: Frame): Place => frontPoint(frame, frame.levels.bust, frame.breast.apex);

export const neckShoulderPoint = (rings: Rings): Place => ringPoint(rings, rings.index.neck, SIDE);

/** From the neck shoulder point to the bust point. */
export function neckToBust(frame: Frame, rings: Rings): Path {
  const [xn, yn, zn] = neckShoulderPoint(rings);
  const [xb, yb, zb] = bustPoint(frame);
  const slope = (xn - xb) / (yn - yb);
  const along = Math.hypot(1, slope);
  const cut = emptyCut();
  add(cut, 0, zn, xn, yn, zn);
  for (let i = rings.index.neck - 1; i > rings.index.bust; i--) {
    const met = frontMeets(rings, i, xb - slope * yb, slope);
    if (!met || met[1] >= yn || met[1] <= yb) continue;
    add(cut, (yn - met[1]) * along, met[2], ...met);
  }
  add(cut, (yn - yb) * along, zb, xb, yb, zb);
  return over(cut);
}

/** On from the bust point straight down to the waist. */
export function bustToWaist(frame: Frame, rings: Rings): Path {
  const [xb, yb, zb] = bustPoint(frame);
  const cut = emptyCut();
  add(cut, 0, zb, xb, yb, zb);
  for (let i = rings.index.bust - 1; i >= rings.index.waist; i--) {
    const met = frontMeets(rings, i, xb, 0);
    if (met) add(cut, yb - met[1], met[2], ...met);
  }
  return over(cut);
}

/** The folds of the arms lie so many columns to the front and the back of the side: where a section turns from the plate of
 * the armhole into front and back, 27 degrees of its angle; judged. */
const foldColumns = 9;

/** The height half-way down to the underarm, where the widths across are taken. */
const acrossHeight = ({ levels, backHeight }: Frame): number =>
  (at(backHeight, levels.neck) + levels.underarm) / 2;

/** Where the left arm folds against the back, and against the front, half-way down to the underarm. */
export function foldPlaces(frame: Frame, rings: Rings): readonly [back: Place, front: Place] {
  const { space } = foldCut(frame, rings);
  const place = (k: number): Place => [
    space[3 * k] as number,
    space[3 * k + 1] as number,
    space[3 * k + 2] as number,
  ];
  return [place(SIDE + foldColumns), place(SIDE - foldColumns)];
}

/** Where a plumb line from the bust point meets the waist. */
export const waistBelowBust = (frame: Frame, rings: Rings): Place =>
  frontMeets(rings, rings.index.waist, bustPoint(frame)[0], 0) ?? ringPoint(rings, rings.index.waist, SIDE);

/** Across the back and the front, from fold to fold of the arms. */
export function across(frame: Frame, rings: Rings): { readonly back: Path; readonly front: Path } {
  const { u, space } = foldCut(frame, rings);
  const from = (middle: number, sign: number): Path => {
    const whole = emptyCut();
    const put = (k: number, side: number): void => {
      const [x, y, z] = [side * (u[k] as number), space[3 * k + 1] as number, space[3 * k + 2] as number];
      add(whole, x, sign * z, x, y, z);
    };
    const count = SIDE - foldColumns;
    for (let k = count; k > 0; k--) put(middle + sign * k, -1);
    for (let k = 0; k <= count; k++) put(middle + sign * k, 1);
    return over(whole);
  };
  return { back: from(HALF, -1), front: from(0, 1) };
}

/** The level section half-way down to the underarm; it lies above that everywhere. */
const foldCut = (frame: Frame, rings: Rings): SectionCut =>
  planeCut(rings, [rings.index.underarm, rings.index.neck], acrossHeight(frame));

/** Along the shoulder, from the neck shoulder point to the shoulder point. */
export function alongShoulder(rings: Rings): Path {
  const [a, b] = [neckShoulderPoint(rings), ringPoint(rings, rings.index.shoulder, SIDE)];
  return { points: [...a, ...b], length: Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2]), round: false };
}
