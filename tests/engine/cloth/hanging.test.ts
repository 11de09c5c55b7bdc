import { describe, expect, it } from 'vitest';
import { Bending } from '../../../engine/cloth/bending.ts';
import { weightPerArea } from '../../../engine/cloth/cloth.ts';
import { Equilibrium } from '../../../engine/cloth/equilibrium.ts';
import { Membrane } from '../../../engine/cloth/membrane.ts';
import { pointAreas, sheetOf } from '../../../engine/cloth/sheet.ts';
import { Weight } from '../../../engine/cloth/weight.ts';
import {
  holding,
  placed,
  pointsWhere,
  rectangleMesh,
  sheetMaterial,
  withMirrorImage,
} from './trial-cloth.ts';

describe('cloth that hangs', () => {
  it('from both ends takes the form of a catenary', () => {
    const [length, width, span] = [400, 20, 300];
    const mesh = rectangleMesh(length, width, 10);
    const cloth = sheetMaterial({ stretch: 20, bending: 1e-7 });
    const sheet = sheetOf(mesh.points, mesh.triangles, cloth);
    const x = placed(mesh.points, (u, v) => [(u * span) / length, -90 * Math.sin((Math.PI * u) / length), v]);
    const ends = pointsWhere(mesh.points, (u) => u < 1e-9 || u > length - 1e-9);
    const balance = new Equilibrium(
      [new Membrane(sheet), new Bending(sheet), new Weight(sheet)],
      pointAreas(sheet, false),
      mesh.points,
    );
    const settled = balance.settle(x, holding(sheet.count, ends), { residual: 1e-8, steps: 300 });
    expect(settled.atRest).toBe(true);
    // y = a cosh(x / a), with 2 a sinh(span / 2 a) = length (Leibniz, Huygens and Johann Bernoulli, 1691).
    let a = 0;
    let low = 20;
    let high = 1000;
    for (let i = 0; i < 100; i++) {
      a = (low + high) / 2;
      if (2 * a * Math.sinh(span / 2 / a) > length) low = a;
      else high = a;
    }
    const sag = a * (Math.cosh(span / 2 / a) - 1);
    let lowest = 0;
    for (let i = 0; i < sheet.count; i++) lowest = Math.min(lowest, x[3 * i + 1] as number);
    expect(Math.abs(-lowest / sag - 1)).toBeLessThan(0.002);
  });

  it('by its top stretches by its own weight, to a thousandth', () => {
    const [width, length] = [60, 800];
    const mesh = rectangleMesh(width, length, 20);
    const cloth = sheetMaterial({ stretch: 0.24 });
    const sheet = sheetOf(mesh.points, mesh.triangles, cloth);
    const x = placed(mesh.points, (u, v) => [u, -v, 0]);
    const balance = new Equilibrium(
      [new Membrane(sheet), new Bending(sheet), new Weight(sheet)],
      pointAreas(sheet, false),
      mesh.points,
    );
    const top = pointsWhere(mesh.points, (_, v) => v < 1e-9);
    const settled = balance.settle(x, holding(sheet.count, top), { residual: 1e-9, steps: 100 });
    expect(settled.atRest).toBe(true);
    // Weight below each place equals the tension: w (L - s) = k l (l^2 - 1) / 2, l the stretch there; to first order w L^2 / 2 k.
    const w = weightPerArea(cloth);
    let expected = 0;
    for (let i = 0; i < 1000; i++) {
      const load = (w * length * (i + 0.5)) / 1000 / cloth.warp.stretch;
      let l = 1 + load;
      for (let n = 0; n < 20; n++) l -= ((l * (l * l - 1)) / 2 - load) / ((3 * l * l - 1) / 2);
      expected += ((l - 1) * length) / 1000;
    }
    const bottom = pointsWhere(mesh.points, (_, v) => v > length - 1e-9);
    const longer = bottom.reduce((sum, i) => sum - (x[3 * i + 1] as number), 0) / bottom.length - length;
    expect(expected).toBeCloseTo(1.96, 1);
    expect(Math.abs(longer / expected - 1)).toBeLessThan(0.001);
  });

  it.each([0.5, 3])(
    'over an edge bends as a heavy elastica, weight %d times rigidity by length cubed',
    (heavy) => {
      const [length, width] = [100, 20];
      const bending = 0.02;
      // Weight per area so that w L^3 / B is what the case says.
      const weight = (heavy * bending) / length ** 3 / (1e-12 * 9806.65);
      const half = rectangleMesh(length, width, 5);
      // Both halves of a strip that hangs over a wire: by symmetry each is built in level there.
      const mesh = withMirrorImage(half);
      const cloth = sheetMaterial({ stretch: 20, bending, weight });
      const sheet = sheetOf(mesh.points, mesh.triangles, cloth);
      const x = placed(mesh.points, (u, v) => [u, -1e-4 * u * u, v]);
      const wire = pointsWhere(mesh.points, (u) => Math.abs(u) < 1e-9);
      const balance = new Equilibrium(
        [new Membrane(sheet), new Bending(sheet), new Weight(sheet)],
        pointAreas(sheet, false),
        mesh.points,
      );
      const settled = balance.settle(x, holding(sheet.count, wire), { residual: 1e-9, steps: 400 });
      expect(settled.atRest).toBe(true);
      const tip = pointsWhere(mesh.points, (u) => u > length - 1e-9);
      const drop = tip.reduce((sum, i) => sum - (x[3 * i + 1] as number), 0) / tip.length;
      // B t'' = -w (L - s) cos t, t(0) = 0, t'(L) = 0 (the elastica under its own weight): shot by Runge-Kutta.
      const shoot = (bend: number): { readonly end: number; readonly drop: number } => {
        const n = 2000;
        const h = length / n;
        let [angle, rate, fall] = [0, bend, 0];
        const slope = (s: number, t: number): number => (-heavy * (length - s) * Math.cos(t)) / length ** 3;
        for (let i = 0; i < n; i++) {
          const s = i * h;
          const k1 = slope(s, angle);
          const k2 = slope(s + h / 2, angle + (h / 2) * rate);
          const k3 = slope(s + h / 2, angle + (h / 2) * (rate + (h / 2) * k1));
          const k4 = slope(s + h, angle + h * (rate + (h / 2) * k2));
          const before = angle;
          angle += h * rate + ((h * h) / 6) * (k1 + k2 + k3);
          rate += (h / 6) * (k1 + 2 * k2 + 2 * k3 + k4);
          fall += h * Math.sin((before + angle) / 2);
        }
        return { end: rate, drop: fall };
      };
      let [low, high] = [0, 0.2];
      for (let i = 0; i < 60; i++) {
        const mid = (low + high) / 2;
        if (shoot(mid).end > 0) high = mid;
        else low = mid;
      }
      const expected = shoot(low).drop;
      expect(Math.abs(drop / expected - 1)).toBeLessThan(0.03);
    },
  );
});
