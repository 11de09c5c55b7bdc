/** A smooth curve through places in rising order: plain data, read by `at`. */
export interface Profile {
  readonly places: readonly number[];
  readonly values: readonly number[];
  readonly slopes: readonly number[];
}

/** What a slope at either end may be said to be, in place of what is natural. */
interface EndSlopes {
  readonly first?: number;
  readonly last?: number;
}

/**
 * The cubic spline through `values` at rising `places`, its slopes held back where it would leave the range of its
 * neighbours: twice differentiable wherever nothing had to be held back, once everywhere, and never beyond its values
 * (J. M. Hyman, Accurate monotonicity preserving cubic interpolation, SIAM J. Sci. Stat. Comput. 4, 1983, equation 2.6).
 */
export function profileThrough(
  knots: readonly (readonly [place: number, value: number])[],
  ends: EndSlopes = {},
): Profile {
  const places = knots.map(([place]) => place);
  const values = knots.map(([, value]) => value);
  const slopes = naturalSlopes(places, values, ends);
  const rise = (i: number): number =>
    ((values[i + 1] ?? 0) - (values[i] ?? 0)) / ((places[i + 1] ?? 0) - (places[i] ?? 0));
  const last = places.length - 1;
  const held = slopes.map((slope, i) => {
    const [before, after] = [i === 0 ? rise(0) : rise(i - 1), i === last ? rise(last - 1) : rise(i)];
    if (before * after <= 0) return 0;
    const most = 3 * Math.min(Math.abs(before), Math.abs(after));
    return Math.sign(before) * Math.min(most, Math.max(0, slope * Math.sign(before)));
  });
  return { places, values, slopes: held };
}

/** Slopes of the spline that bends least (or begins and ends with the slopes given), by Thomas' algorithm. */
function naturalSlopes(places: readonly number[], values: readonly number[], ends: EndSlopes): number[] {
  const count = places.length;
  const width = (i: number): number => (places[i + 1] ?? 0) - (places[i] ?? 0);
  const rise = (i: number): number => ((values[i + 1] ?? 0) - (values[i] ?? 0)) / width(i);
  const upper: number[] = [];
  const right: number[] = [];
  for (let i = 0; i < count; i++) {
    let [below, middle, above, value] = [0, 2, 1, 0];
    if (i === 0) {
      if (ends.first === undefined) value = 3 * rise(0);
      else [middle, above, value] = [1, 0, ends.first];
    } else if (i === count - 1) {
      if (ends.last === undefined) [below, above, value] = [1, 0, 3 * rise(i - 1)];
      else [below, middle, above, value] = [0, 1, 0, ends.last];
    } else {
      const [left, next] = [1 / width(i - 1), 1 / width(i)];
      [below, middle, above] = [left, 2 * (left + next), next];
      value = 3 * (rise(i - 1) * left + rise(i) * next);
    }
    const pivot = middle - below * (upper[i - 1] ?? 0);
    upper.push(above / pivot);
    right.push((value - below * (right[i - 1] ?? 0)) / pivot);
  }
  for (let i = count - 2; i >= 0; i--) right[i] = (right[i] ?? 0) - (upper[i] ?? 0) * (right[i + 1] ?? 0);
  return right;
}

/** The value of a profile at a place; beyond its ends it goes straight on. */
export function at({ places, values, slopes }: Profile, place: number): number {
  const last = places.length - 1;
  let i = 0;
  while (i < last - 1 && place > (places[i + 1] as number)) i++;
  const [from, to] = [places[i] as number, places[i + 1] as number];
  if (place <= from) return (values[i] as number) + (place - from) * (slopes[i] as number);
  if (place >= to) return (values[i + 1] as number) + (place - to) * (slopes[i + 1] as number);
  const width = to - from;
  const t = (place - from) / width;
  const s = 1 - t;
  return (
    s * s * ((1 + 2 * t) * (values[i] as number) + t * width * (slopes[i] as number)) +
    t * t * ((1 + 2 * s) * (values[i + 1] as number) - s * width * (slopes[i + 1] as number))
  );
}
