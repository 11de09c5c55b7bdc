import { describe, expect, it } from 'vitest';
import { Bending } from '../../../engine/cloth/bending.ts';
import type { WovenCloth } from '../../../engine/cloth/cloth.ts';
import { Contact } from '../../../engine/cloth/contact.ts';
import { Equilibrium } from '../../../engine/cloth/equilibrium.ts';
import { Membrane } from '../../../engine/cloth/membrane.ts';
import type { Obstacle } from '../../../engine/cloth/obstacle.ts';
import { type ClothSheet, pointAreas, sheetOf } from '../../../engine/cloth/sheet.ts';
import { Weight } from '../../../engine/cloth/weight.ts';
import { meshRegion } from '../../../engine/mesh/mesh-region.ts';
import { placed, pointsWhere, rectangleMesh, sheetMaterial, tubeOf } from './trial-cloth.ts';

/** An upright cylinder about the axis x = z = 0. */
const cylinder =
  (radius: number): Obstacle =>
  (x, _y, z, out) => {
    const away = Math.hypot(x, z);
    out.set([away - radius, x / away, 0, z / away]);
  };

/** A plane through 0 that rises towards x. */
const slope =
  (angle: number): Obstacle =>
  (x, y, _z, out) => {
    out.set([y * Math.cos(angle) - x * Math.sin(angle), -Math.sin(angle), Math.cos(angle), 0]);
  };

/** A tube of cloth of this girth, round an upright axis at some distance. */
function tube(girth: number, height: number, spacing: number, cloth: WovenCloth, radius: number) {
  const mesh = rectangleMesh(girth, height, spacing);
  const { become, count } = tubeOf(mesh.points, girth);
  const flat = sheetOf(mesh.points, mesh.triangles, cloth);
  const sheet: ClothSheet = { ...flat, count, triangles: flat.triangles.map((p) => become[p] as number) };
  const x = new Float64Array(3 * count);
  for (const [i, p] of become.entries()) {
    const turn = (2 * Math.PI * (mesh.points[2 * i] as number)) / girth;
    x.set([radius * Math.cos(turn), -(mesh.points[2 * i + 1] as number), radius * Math.sin(turn)], 3 * p);
  }
  return { sheet, x };
}

/** Rest on an obstacle; along `upright` nothing moves where that is asked. */
function rest(sheet: ClothSheet, x: Float64Array, obstacle: Obstacle, level: boolean) {
  const areas = pointAreas(sheet, false);
  const contact = new Contact(obstacle, areas, sheet.cloth.thickness / 2, sheet.cloth.friction);
  const membrane = new Membrane(sheet);
  const held = new Uint8Array(x.length);
  if (level) for (let k = 1; k < held.length; k += 3) held[k] = 1;
  const balance = new Equilibrium([membrane, new Bending(sheet), contact], areas, x.slice());
  return { settled: balance.settle(x, held, { residual: 1e-8, steps: 200 }), contact, membrane };
}

describe('cloth about a cylinder', () => {
  const radius = 60;

  it('as a hoop pulled over it, presses with its tension over the radius', () => {
    const girth = 2 * Math.PI * radius * 0.97;
    const cloth = sheetMaterial({ stretch: 2, bending: 1e-6, thickness: 0.4 });
    const { sheet, x } = tube(girth, 40, 10, cloth, radius * 1.02);
    const { settled, contact, membrane } = rest(sheet, x, cylinder(radius), true);
    expect(settled.atRest).toBe(true);
    // The hoop's law, p = T / r (Mariotte, 1686): summed over the hoop, 2 pi T times its height.
    const strains = membrane.strains(x).filter((_, k) => k % 3 === 0);
    const strain = strains.reduce((sum, u) => sum + u, 0) / strains.length;
    const tension = cloth.weft.stretch * strain * Math.sqrt(1 + 2 * strain);
    const pressed = contact.forces(x).reduce((sum, force) => sum + force, 0);
    expect(pressed / (2 * Math.PI * tension * 40)).toBeCloseTo(1, 2);
  });

  it.each([7, 10, 14])('without ease leaves no more than its own thickness, mesh %d mm', (spacing) => {
    const cloth = sheetMaterial({ thickness: 0.5, pressed: 0.02 });
    const { sheet, x } = tube(2 * Math.PI * radius, 60, spacing, cloth, radius * 1.05);
    const { settled } = rest(sheet, x, cylinder(radius), true);
    expect(settled.atRest).toBe(true);
    // Its middle lies half its thickness off, so that a tape about its outside reads 2 pi times the thickness more.
    expect(radialMean(x) - radius).toBeCloseTo(cloth.thickness / 2, 1);
  });

  it('with ease hangs off it, as long round as it was cut', () => {
    const girth = 2 * Math.PI * radius + 20;
    const { sheet, x } = tube(girth, 60, 10, sheetMaterial({ pressed: 0.02 }), radius * 1.1);
    rest(sheet, x, cylinder(radius), true);
    expect(2 * Math.PI * radialMean(x)).toBeGreaterThan(girth - 1);
  });

  it('comes to the same rest from the same start, to the bit', () => {
    const once = tube(2 * Math.PI * radius, 40, 10, sheetMaterial(), radius * 1.05);
    const again = tube(2 * Math.PI * radius, 40, 10, sheetMaterial(), radius * 1.05);
    rest(once.sheet, once.x, cylinder(radius), true);
    rest(again.sheet, again.x, cylinder(radius), true);
    expect(again.x).toEqual(once.x);
  });

  const radialMean = (x: Float64Array): number => {
    let sum = 0;
    for (let i = 0; i < x.length; i += 3) sum += Math.hypot(x[i] as number, x[i + 2] as number);
    return sum / (x.length / 3);
  };
});

describe('cloth on a slope', () => {
  it.each([
    [0.2, true],
    [0.45, false],
  ])('of angle %d, friction 0.3: lies still is %s', (angle, still) => {
    const mesh = rectangleMesh(60, 40, 10);
    const sheet = sheetOf(mesh.points, mesh.triangles, sheetMaterial({ friction: 0.3 }));
    const areas = pointAreas(sheet, false);
    const off = sheet.cloth.thickness / 2;
    const x = placed(mesh.points, (u, v) => [
      u * Math.cos(angle) - off * Math.sin(angle),
      u * Math.sin(angle) + off * Math.cos(angle),
      v,
    ]);
    const weight = new Weight(sheet);
    const contact = new Contact(slope(angle), areas, off, sheet.cloth.friction);
    const balance = new Equilibrium(
      [new Membrane(sheet), new Bending(sheet), weight, contact],
      areas,
      mesh.points,
    );
    const held = new Uint8Array(x.length);
    // First it is let down straight, so that its weight presses.
    for (let k = 0; k < held.length; k += 3) held[k] = 1;
    balance.settle(x, held, { residual: 1e-10, steps: 60 });
    contact.hold(x);
    const before = x.slice();
    const { atRest } = balance.settle(x, new Uint8Array(x.length), { residual: 1e-9, steps: 60 });
    let most = 0;
    for (let k = 0; k < x.length; k++)
      most = Math.max(most, Math.abs((x[k] as number) - (before[k] as number)));
    // Coulomb, 1781: it slides where the slope is steeper than the friction, 0.29 radians.
    if (still) expect(atRest).toBe(true);
    expect(most < 0.6).toBe(still);
    if (!still) return;
    // Told to hold by what presses now, and that is the same, it goes on lying there.
    contact.press(x);
    const lay = x.slice();
    expect(balance.settle(x, new Uint8Array(x.length), { residual: 1e-6, steps: 60 }).atRest).toBe(true);
    for (let k = 0; k < x.length; k++)
      expect(Math.abs((x[k] as number) - (lay[k] as number))).toBeLessThan(0.05);
  });
});

describe('a sector of paper, its straight edges sewn together', () => {
  it('becomes a cone whose half-angle has the sine of the share of the circle', () => {
    const [length, turn] = [100, Math.PI];
    const steps = 10;
    const border: number[] = [];
    const at = (r: number, angle: number): void => {
      border.push(r * Math.cos(angle), r * Math.sin(angle));
    };
    const arcSteps = Math.round((length * turn) / 10);
    // The point of a cone is left out: cut off at a tenth of its length.
    const inner = Math.round((0.1 * length * turn) / 8);
    for (let i = 0; i < arcSteps; i++) at(length, (turn * i) / arcSteps);
    for (let i = 0; i < steps; i++) at(length - (0.9 * length * i) / steps, turn);
    for (let i = 0; i < inner; i++) at(0.1 * length, turn - (turn * i) / inner);
    for (let i = 0; i < steps; i++) at(0.1 * length + (0.9 * length * i) / steps, 0);
    const mesh = meshRegion(Float64Array.from(border), 10);
    const radii = (i: number): number =>
      Math.hypot(mesh.points[2 * i] as number, mesh.points[2 * i + 1] as number);
    const angles = (i: number): number =>
      Math.atan2(mesh.points[2 * i + 1] as number, mesh.points[2 * i] as number);
    const first = pointsWhere(mesh.points, (u, v) => Math.abs(v) < 1e-9 && u > 0);
    const last = pointsWhere(mesh.points, (u, v) => Math.abs(v) < 1e-9 && u < 0);
    const become = Int32Array.from({ length: mesh.points.length / 2 }, (_, i) => i);
    for (const p of last) become[p] = first.find((q) => Math.abs(radii(q) - radii(p)) < 1e-6) ?? Number.NaN;
    const paper = sheetMaterial({ stretch: 50, bending: 0.5, weight: 80, pressed: 1 });
    const flat = sheetOf(mesh.points, mesh.triangles, paper);
    const used = [...new Set(become)];
    const number = new Map(used.map((p, i) => [p, i]));
    const sheet: ClothSheet = {
      ...flat,
      count: used.length,
      triangles: flat.triangles.map((p) => number.get(become[p] as number) as number),
    };
    // Begun far from round: a squashed funnel, blunter than it will be.
    const x = new Float64Array(3 * used.length);
    for (const [i, p] of used.entries()) {
      const r = radii(p);
      const round = (2 * Math.PI * angles(p)) / turn;
      x.set([0.62 * r * Math.cos(round), -0.7 * r, 0.4 * r * Math.sin(round)], 3 * i);
    }
    const areas = pointAreas(sheet, false);
    const balance = new Equilibrium([new Membrane(sheet), new Bending(sheet)], areas, x.slice());
    const { atRest } = balance.settle(x, new Uint8Array(x.length), { residual: 1e-6, steps: 300 });
    expect(atRest).toBe(true);
    // The angle between opposite generators is twice the half-angle: from the rim, about the middle of it and of the small rim.
    const rims = [length, 0.1 * length].map((radius) =>
      used.map((p, i) => ({ p, i })).filter(({ p }) => Math.abs(radii(p) - radius) < 1e-6),
    );
    const [wide = [], narrow = []] = rims.map((rim) => {
      const centre = [0, 1, 2].map(
        (k) => rim.reduce((sum, { i }) => sum + (x[3 * i + k] as number), 0) / rim.length,
      );
      const mean =
        rim.reduce(
          (sum, { i }) =>
            sum + Math.hypot(...[0, 1, 2].map((k) => (x[3 * i + k] as number) - (centre[k] ?? 0))),
          0,
        ) / rim.length;
      return [...centre, mean];
    });
    const height = Math.hypot(...[0, 1, 2].map((k) => (wide[k] ?? 0) - (narrow[k] ?? 0)));
    const halfAngle = Math.atan(((wide[3] ?? 0) - (narrow[3] ?? 0)) / height);
    const degrees = (180 * halfAngle) / Math.PI;
    expect(Math.abs(degrees - (180 * Math.asin(turn / (2 * Math.PI))) / Math.PI)).toBeLessThan(0.5);
  });
});
