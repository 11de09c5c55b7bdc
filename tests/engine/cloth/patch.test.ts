import { describe, expect, it } from 'vitest';
import { Bending } from '../../../engine/cloth/bending.ts';
import { Equilibrium } from '../../../engine/cloth/equilibrium.ts';
import type { Force } from '../../../engine/cloth/force.ts';
import { Membrane } from '../../../engine/cloth/membrane.ts';
import { pointAreas, sheetOf } from '../../../engine/cloth/sheet.ts';
import { blockMatrix, blockPlaces } from '../../../engine/numeric/sparse/block-matrix.ts';
import { graphOf } from '../../../engine/numeric/sparse/graph.ts';
import { placed, pointsWhere, rectangleMesh, sheetMaterial } from './trial-cloth.ts';

/** Plane stress with modulus times thickness E and ratio v (Timoshenko & Goodier, Theory of Elasticity, 1970, section 7). */
const isotropic = (modulus: number, ratio: number) => ({
  stretch: modulus / (1 - ratio * ratio),
  coupling: (modulus * ratio) / (1 - ratio * ratio),
  shear: modulus / (2 * (1 + ratio)),
});

/** Forces that stay the same wherever the points go. */
class Loads implements Force {
  readonly pairs: readonly number[] = [];
  readonly #loads: ReadonlyMap<number, number>;
  constructor(loads: ReadonlyMap<number, number>) {
    this.#loads = loads;
  }
  bind(): void {}
  energy(x: Float64Array): number {
    let sum = 0;
    for (const [k, load] of this.#loads) sum -= load * (x[k] as number);
    return sum;
  }
  add(_x: Float64Array, gradient: Float64Array): void {
    for (const [k, load] of this.#loads) gradient[k] = (gradient[k] as number) - load;
  }
}

describe('a patch of cloth in its plane', () => {
  it.each([0, 0.6])('pulled one way lengthens and narrows as in plane stress, grain turned by %d', (turn) => {
    const [width, height, modulus, ratio, pull] = [80, 60, 4, 0.3, 0.004];
    const mesh = rectangleMesh(width, height, 10);
    const sheet = sheetOf(mesh.points, mesh.triangles, sheetMaterial(isotropic(modulus, ratio)), turn);
    const x = placed(mesh.points, (u, v) => [u, v, 0]);
    // The pull, shared out over the points of both ends by the length that each stands for.
    const loads = new Map<number, number>();
    const ends = [0, width].map((end) => pointsWhere(mesh.points, (u) => Math.abs(u - end) < 1e-9));
    for (const [side, points] of ends.entries())
      for (const p of points) {
        const v = mesh.points[2 * p + 1] as number;
        const share = v < 1e-9 || v > height - 1e-9 ? 0.5 : 1;
        loads.set(3 * p, ((side === 0 ? -1 : 1) * share * pull * height) / (points.length - 1));
      }
    const held = new Uint8Array(3 * sheet.count);
    const corner = pointsWhere(mesh.points, (u, v) => u < 1e-9 && v < 1e-9)[0] as number;
    const below = pointsWhere(mesh.points, (u, v) => u < 1e-9 && v > height - 1e-9)[0] as number;
    held.set([1, 1, 1], 3 * corner);
    held[3 * below] = 1;
    for (let i = 0; i < sheet.count; i++) held[3 * i + 2] = 1;
    const balance = new Equilibrium(
      [new Membrane(sheet), new Loads(loads)],
      pointAreas(sheet, false),
      mesh.points,
    );
    expect(balance.settle(x, held, { residual: 1e-12, steps: 60 }).atRest).toBe(true);
    const far = pointsWhere(mesh.points, (u) => u > width - 1e-9);
    // Loads are dead and strains Green's, so Hooke's law holds to the size of the strain, a thousandth.
    for (const p of far) {
      expect(((x[3 * p] as number) - width) / width / (pull / modulus)).toBeCloseTo(1, 2);
    }
    expect(((x[3 * below + 1] as number) - height) / height / ((-ratio * pull) / modulus)).toBeCloseTo(1, 2);
  });

  it('sheared holds the energy that its shear stiffness says', () => {
    const mesh = rectangleMesh(50, 50, 10);
    const { stretch, coupling, shear } = isotropic(4, 0.3);
    const sheet = sheetOf(mesh.points, mesh.triangles, sheetMaterial({ stretch, coupling, shear }));
    const angle = 1e-3;
    const x = placed(mesh.points, (u, v) => [u + angle * v, v, 0]);
    expect(new Membrane(sheet).energy(x) / ((shear * angle * angle * 2500) / 2)).toBeCloseTo(1, 4);
  });

  it('pressed together keeps the share of its stiffness that buckled threads have', () => {
    const mesh = rectangleMesh(50, 50, 10);
    const sheet = sheetOf(mesh.points, mesh.triangles, sheetMaterial({ stretch: 5, pressed: 0.02 }));
    const strain = 1e-4;
    const narrower = placed(mesh.points, (u, v) => [u * (1 - strain), v, 0]);
    const wider = placed(mesh.points, (u, v) => [u * (1 + strain), v, 0]);
    const membrane = new Membrane(sheet);
    expect(membrane.energy(narrower) / membrane.energy(wider)).toBeCloseTo(0.02, 4);
  });
});

describe('the derivatives of what cloth holds', () => {
  it.each([
    ['taut', 1.02, 1],
    ['pressed both ways', 0.9, 0.05],
    ['crimped', 0.97, 0.3],
  ])('agree with differences where it is %s', (_, scale, pressed) => {
    const mesh = rectangleMesh(30, 20, 10);
    const material = sheetMaterial({ coupling: 1.2, pressed });
    const sheet = sheetOf(mesh.points, mesh.triangles, material, 0.7);
    const x = placed(mesh.points, (u, v) => [
      u * scale,
      v * (2 - scale) * scale,
      3 * Math.sin(u / 9) + 2 * Math.cos(v / 7),
    ]);
    for (const force of [new Membrane(sheet), new Bending(sheet)]) {
      const graph = graphOf(sheet.count, force.pairs);
      force.bind(blockPlaces(graph));
      const gradient = new Float64Array(x.length);
      force.add(x, gradient, blockMatrix(graph).values);
      for (let k = 0; k < x.length; k += 2) {
        const h = 1e-5;
        const [up, down] = [x.slice(), x.slice()];
        up[k] = (x[k] as number) + h;
        down[k] = (x[k] as number) - h;
        expect(gradient[k]).toBeCloseTo((force.energy(up) - force.energy(down)) / (2 * h), 5);
      }
    }
  });

  it('give the stiffness of taut cloth exactly', () => {
    const mesh = rectangleMesh(30, 20, 10);
    const sheet = sheetOf(mesh.points, mesh.triangles, sheetMaterial({ coupling: 1.2 }), 0.7);
    const x = placed(mesh.points, (u, v) => [u * 1.03, v * 1.04, 0.2 * Math.sin(u / 9)]);
    const force = new Membrane(sheet);
    const graph = graphOf(sheet.count, force.pairs);
    const place = blockPlaces(graph);
    force.bind(place);
    const matrix = blockMatrix(graph);
    force.add(x, new Float64Array(x.length), matrix.values);
    const h = 1e-5;
    for (let a = 0; a < sheet.count; a++)
      for (let m = 0; m < 3; m++) {
        const gradients = [h, -h].map((move) => {
          const moved = x.slice();
          moved[3 * a + m] = (moved[3 * a + m] as number) + move;
          const gradient = new Float64Array(x.length);
          force.add(moved, gradient, blockMatrix(graph).values);
          return gradient;
        });
        for (const b of graph.neighbours.slice(graph.starts[a], graph.starts[a + 1]))
          for (let k = 0; k < 3; k++) {
            const slope =
              (((gradients[0]?.[3 * b + k] ?? 0) - (gradients[1]?.[3 * b + k] ?? 0)) as number) / (2 * h);
            const [row, column] = b > a ? [k, m] : [m, k];
            expect(matrix.values[place(a, b) + 3 * row + column]).toBeCloseTo(slope, 5);
          }
      }
  });
});
