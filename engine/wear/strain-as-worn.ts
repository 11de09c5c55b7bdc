import { Membrane } from '../cloth/membrane.ts';
import { triangleAreas } from '../cloth/sheet.ts';
import type { Worn } from './worn.ts';

/** How far threads of one direction are stretched: at the tightest hundredth of the cloth, and on how much of it by over 1 %. */
export interface Strain {
  readonly grain: 'weft' | 'warp';
  readonly most: number;
  readonly over: number;
}

/** The tightest hundredth of the cloth is told, since a corner where a strap is sewn on says nothing of the dress. */
const TIGHTEST = 0.01;

/** The strain of the cloth along each of its threads. */
export function strainOf({ sewn, x }: Worn): readonly Strain[] {
  const strains = new Membrane(sewn.sheet).strains(x);
  const areas = triangleAreas(sewn.sheet);
  const whole = areas.reduce((sum, area) => sum + area, 0);
  return (['weft', 'warp'] as const).map((grain, k): Strain => {
    const order = Array.from(areas, (_, t) => t).sort(
      (a, b) => (strains[3 * b + k] as number) - (strains[3 * a + k] as number),
    );
    let passed = 0;
    let most = 0;
    let over = 0;
    for (const t of order) {
      const strain = strains[3 * t + k] as number;
      const area = areas[t] as number;
      passed += area;
      if (most === 0 && passed >= TIGHTEST * whole) most = strain;
      if (strain > 0.01) over += area;
    }
    return { grain, most, over: over / whole };
  });
}

/** The greatest pressure of the cloth on the body, kPa. */
export function pressureOf({ forces, areas }: Worn): number {
  let most = 0;
  for (let i = 0; i < forces.length; i++)
    most = Math.max(most, (forces[i] as number) / Math.max(1, areas[i] as number));
  return most * 1000;
}
