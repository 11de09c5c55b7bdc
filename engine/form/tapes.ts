import type { Place } from './form.ts';
import type { Frame } from './frame.ts';
import { tautChain, tautHalf } from './hull.ts';
import { at } from './profile.ts';
import type { Rings } from './rings.ts';
import { COLUMNS, frontPoint, HALF, SIDE } from './section.ts';

/**
 * Tapes laid on the form. A tape lies taut in its plane: it bridges hollows, as the convex hull of the section does. A path
 * holds x, y, z one after the other; a tape round the body holds its left half only, and its length is that of both.
 */
export interface Path {
  readonly points: readonly number[];
  readonly length: number;
  /** The points are half of a loop that the mirror closes. */
  readonly round: boolean;
}

/** Points of a plane section: where they lie in the plane (along, outward) and in space. */
interface Cut {
  readonly u: number[];
  readonly v: number[];
  readonly space: number[];
}

const emptyCut = (): Cut => ({ u: [], v: [], space: [] });

const add = (cut: Cut, u: number, v: number, x: number, y: number, z: number): void => {
  cut.u.push(u);
  cut.v.push(v);
  cut.space.push(x, y, z);
};

/** A tape over an open cut, from its first point to its last. */
function over(cut: Cut): Path {
  return pathOf(cut, tautChain(cut.u, cut.v), false, 0);
}

/** A tape round half a loop that its mirror image in x = 0 closes. `u` is x. */
function round(cut: Cut): Path {
  const chain = tautHalf(cut.u, cut.v);
  const ends = (cut.u[chain[0] as number] as number) + (cut.u[chain.at(-1) as number] as number);
  return pathOf(cut, chain, true, ends);
}

function pathOf({ u, v, space }: Cut, chain: readonly number[], isRound: boolean, ends: number): Path {
  const points: number[] = [];
  let length = ends;
  for (const [k, i] of chain.entries()) {
    points.push(space[3 * i] as number, space[3 * i + 1] as number, space[3 * i + 2] as number);
    const before = chain[k - 1];
    if (before !== undefined)
      length += Math.hypot(
        (u[i] as number) - (u[before] as number),
        (v[i] as number) - (v[before] as number),
      );
  }
  return { points, length: isRound ? 2 * length : length, round: isRound };
}

/** A point of a half section. */
export const ringPoint = ({ points }: Rings, ring: number, column: number): Place => {
  const i = 3 * (ring * COLUMNS + column);
  return [points[i] as number, points[i + 1] as number, points[i + 2] as number];
};

/** A level tape at a ring. */
export function girthAt(rings: Rings, ring: number): Path {
  const cut = emptyCut();
  for (let j = 0; j < COLUMNS; j++) {
    const [x, y, z] = ringPoint(rings, ring, j);
    add(cut, x, z, x, y, z);
  }
  return round(cut);
}

/** The half section of the plane y = height + pitch * (z - from), column by column, between two rings. */
function planeCut(
  rings: Rings,
  [first, last]: readonly [number, number],
  height: number,
  pitch = 0,
  from = 0,
): Cut {
  const cut = emptyCut();
  const along = Math.hypot(1, pitch);
  const { points } = rings;
  const row = 3 * COLUMNS;
  for (let j = 0; j < COLUMNS; j++) {
    let a = first * row + 3 * j;
    let da = (points[a + 1] as number) - height - pitch * ((points[a + 2] as number) - from);
    for (let i = first + 1; i <= last; i++) {
      const b = a + row;
      const db = (points[b + 1] as number) - height - pitch * ((points[b + 2] as number) - from);
      if (da <= 0 && db > 0) {
        const t = da / (da - db);
        const part = (k: number): number =>
          (1 - t) * (points[a + k] as number) + t * (points[b + k] as number);
        const [x, y, z] = [part(0), part(1), part(2)];
        add(cut, x, z * along, x, y, z);
        break;
      }
      a = b;
      da = db;
    }
  }
  return cut;
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
    if (y < height - 1e-9) {
      const before = cut.space.length - 3;
      const [y0, z0] = [cut.space[before + 1] as number, cut.space[before + 2] as number];
      if (y0 - height > 1e-9) {
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

/** Where a ring's front half meets the plane that holds the z axis and the line x = from + slope * y. */
function frontMeets(rings: Rings, ring: number, from: number, slope: number): Place | undefined {
  const { points } = rings;
  let a = 3 * ring * COLUMNS;
  let da = (points[a] as number) - from - slope * (points[a + 1] as number);
  for (let j = 1; j <= SIDE; j++) {
    const b = a + 3;
    const db = (points[b] as number) - from - slope * (points[b + 1] as number);
    if (da <= 0 && db > 0) {
      const t = da / (da - db);
      const part = (k: number): number => (1 - t) * (points[a + k] as number) + t * (points[b + k] as number);
      return [part(0), part(1), part(2)];
    }
    a = b;
    da = db;
  }
  return undefined;
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
const foldCut = (frame: Frame, rings: Rings): Cut =>
  planeCut(rings, [rings.index.underarm, rings.index.neck], acrossHeight(frame));

/** Along the shoulder, from the neck shoulder point to the shoulder point. */
export function alongShoulder(rings: Rings): Path {
  const [a, b] = [neckShoulderPoint(rings), ringPoint(rings, rings.index.shoulder, SIDE)];
  return { points: [...a, ...b], length: Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2]), round: false };
}
