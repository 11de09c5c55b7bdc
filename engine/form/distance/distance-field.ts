import { type Form, type PartName, partNames } from '../form.ts';
import { exactBand } from './exact-band.ts';
import { type Grid, gridAround } from './grid.ts';
import { far, sweep } from './sweep.ts';

/** Signed distances to a body at the nodes of a grid, mm: outside positive. Plain data, made once. */
export interface DistanceField extends Grid {
  /** x runs fastest, then y, then z. */
  readonly values: Float64Array;
}

interface FieldOptions {
  /** mm between nodes. */
  readonly spacing?: number;
  /** Which parts of the body count. */
  readonly parts?: readonly PartName[];
  /** How far beyond the body the grid goes, mm. */
  readonly margin?: number;
}

/**
 * Signed distances to the body, that is to whichever of its parts is nearest. Exact at nodes within three cells of the
 * surface (nearest triangle; its sign by the pseudonormal of the feature that is nearest: J. A. Baerentzen and H. Aanaes,
 * Signed distance computation using the angle weighted pseudonormal, IEEE TVCG 11, 2005), and carried on from there by
 * sweeps over the eikonal equation (H. Zhao, A fast sweeping method for eikonal equations, Math. Comp. 74, 2005), which
 * is some per cent off and serves only to say where the body lies.
 */
export function distanceField(
  { surface }: Pick<Form, 'surface'>,
  { spacing = 8, parts = partNames, margin = 60 }: FieldOptions = {},
): DistanceField {
  const grid = gridAround(surface, parts, spacing, margin);
  const values = new Float64Array(grid.counts[0] * grid.counts[1] * grid.counts[2]).fill(
    Number.POSITIVE_INFINITY,
  );
  for (const name of parts) {
    const own = exactBand(surface, name, grid);
    markInside(own, grid.counts);
    // What is nearer counts; whatever lies inside one part lies inside the body.
    for (let i = 0; i < own.length; i++) values[i] = Math.min(values[i] as number, own[i] as number);
  }
  sweep(values, grid);
  return { ...grid, values };
}

/** What is unknown is far outside, unless it lies between nodes that are inside: found row by row, each from its known ends. */
function markInside(own: Float64Array, [nx, ny, nz]: readonly [number, number, number]): void {
  for (let row = 0; row < ny * nz; row++) {
    let inside = false;
    for (let i = 0; i < nx; i++) {
      const node = row * nx + i;
      const value = own[node] as number;
      if (Number.isFinite(value)) inside = value < 0;
      else own[node] = inside ? -far : far;
    }
  }
}
