/** A place is narrowed down to this share of the interval; nearer, the function itself changes by rounding only. */
const NEAR = 1e-10;
/** Far more steps than a summit takes: against rounding only. */
const MOST_STEPS = 60;

/**
 * Where a function is greatest on an interval: the best of so many looks, then the place beside it where the slope
 * vanishes, by false position (the Illinois method: M. Dowell and P. Jarratt, 1971, from memory). `slope` needs to have
 * the sign of the function's derivative and to change evenly. Of several summits between two looks one may be missed.
 */
export function placeOfGreatest(
  f: (t: number) => number,
  slope: (t: number) => number,
  t0: number,
  t1: number,
  looks: number,
): number {
  const step = (t1 - t0) / looks;
  let best = 0;
  let greatest = -Infinity;
  for (let i = 0; i <= looks; i++) {
    const value = f(t0 + i * step);
    if (value > greatest) {
      greatest = value;
      best = i;
    }
  }
  const look = t0 + best * step;
  const rise = slope(look);
  if (rise === 0 || (best === looks && rise > 0) || (best === 0 && rise < 0)) return look;
  const next = rise > 0 ? look + step : look - step;
  const summit = placeOfZero(slope, look, rise, next, NEAR * (t1 - t0));
  return f(summit) >= greatest ? summit : look;
}

/** Where a function is zero between a place where its value is known and another one, to `near`. */
function placeOfZero(
  f: (t: number) => number,
  from: number,
  atFrom: number,
  to: number,
  near: number,
): number {
  let [start, atStart, end] = [from, atFrom, to];
  let atEnd = f(to);
  let t = end;
  for (let i = 0; i < MOST_STEPS; i++) {
    const before = t;
    t = atStart * atEnd < 0 ? end - (atEnd * (end - start)) / (atEnd - atStart) : (start + end) / 2;
    const value = f(t);
    if (value === 0 || Math.abs(t - before) <= near) return t;
    if (value * atEnd < 0) {
      start = end;
      atStart = atEnd;
    } else atStart /= 2;
    end = t;
    atEnd = value;
  }
  return t;
}
