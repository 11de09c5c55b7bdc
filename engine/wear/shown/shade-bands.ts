import type { Seen } from '../../render/form/view.ts';

/** A part of a triangle that is drawn in one shade. */
export interface ShadeBand {
  /** Its corners in the order of the triangle's. */
  readonly corners: readonly Seen[];
  /** Which of the shades, the darkest first. */
  readonly shade: number;
}

interface Lit {
  readonly at: Seen;
  /** In shades, with fractions. */
  readonly light: number;
}

/**
 * A triangle cut along the lines at which one shade ends and the next begins: how light each of its corners is, from 0 to 1, is
 * known, and light changes evenly between them (Gouraud, IEEE Transactions on Computers C-20(6), 1971), so that cloth looks as
 * round as it hangs, however large its triangles are. Two triangles with a side in common are cut at the same places of it.
 */
export function shadeBands(
  corners: readonly [Seen, Seen, Seen],
  lights: readonly [number, number, number],
  shades: number,
): readonly ShadeBand[] {
  const lit = corners.map((at, k): Lit => ({ at, light: (lights[k] as number) * shades }));
  const last = shades - 1;
  const first = Math.min(last, Math.floor(Math.min(...lit.map(({ light }) => light))));
  const end = Math.min(last, Math.floor(Math.max(...lit.map(({ light }) => light))));
  const bands: ShadeBand[] = [];
  let rest: readonly Lit[] = lit;
  for (let shade = first; shade < end; shade++) {
    const band = cut(rest, (light) => shade + 1 - light);
    if (band.length > 2) bands.push({ corners: band.map(({ at }) => at), shade });
    rest = cut(rest, (light) => light - shade - 1);
  }
  if (rest.length > 2) bands.push({ corners: rest.map(({ at }) => at), shade: end });
  return bands;
}

/** The part of a polygon where so much is left of the light: 0 or more. */
function cut(polygon: readonly Lit[], left: (light: number) => number): readonly Lit[] {
  return polygon.flatMap((corner, i) => {
    const next = polygon[(i + 1) % polygon.length] as Lit;
    const [own, others] = [left(corner.light), left(next.light)];
    const kept = own >= 0 ? [corner] : [];
    return own * others < 0 ? [...kept, between(corner, next, own / (own - others))] : kept;
  });
}

function between(a: Lit, b: Lit, share: number): Lit {
  const along = (from: number, to: number): number => from + (to - from) * share;
  const [p, q] = [a.at, b.at];
  return {
    at: [along(p[0], q[0]), along(p[1], q[1]), along(p[2], q[2])],
    light: along(a.light, b.light),
  };
}
