import { describe, expect, it } from 'vitest';
import { garments } from '../../../drafts/garments.ts';
import type { WovenCloth } from '../../../engine/cloth/cloth.ts';
import { cloths } from '../../../engine/cloth/cloths.ts';
import { evaluate } from '../../../engine/evaluate.ts';
import type { Garment } from '../../../engine/pattern/garment.ts';
import { sewn } from '../../../engine/wear/sewn.ts';
import { meshQuality } from '../mesh/mesh-quality.ts';

const cotton = cloths.find(({ name }) => name === 'cotton') as WovenCloth;

const body = {
  units: 'cm',
  bustGirth: 92,
  underBustGirth: 75,
  waistGirth: 74,
  hipGirth: 99,
  backNeckPointToWaist: 40.5,
};

function drafted(name: string, styling: Record<string, unknown>): Garment {
  const draft = garments.find((each) => each.name === name);
  const made = draft && evaluate(draft, body, styling);
  if (!made?.ok) throw new Error('not drafted');
  return made.value.garment;
}

const cases: readonly (readonly [string, Record<string, unknown>, number])[] = [
  ['bodice', {}, 7],
  ['bodice', {}, 14],
  ['bodice', { front: 'plain', shoulder: 'whole' }, 10],
  ['bodice', { front: 'plain', shoulder: 'whole', princess: 'armhole', neckline: 'sweetheart' }, 10],
  ['dress', {}, 12],
  ['dress', { opening: 'side', sleeve: 'plain' }, 12],
];

describe('the sewn outside of a garment', () => {
  it.each(cases)('%s %o, %d mm: no angle is under 20 degrees', (name, styling, spacing) => {
    for (const { panel, mesh } of sewn(drafted(name, styling), cotton, spacing).panels)
      expect([panel.name, (180 * meshQuality(mesh).smallestAngle) / Math.PI > 20]).toEqual([
        panel.name,
        true,
      ]);
  });

  it.each(cases)(
    '%s %o, %d mm: two triangles at most meet along a side, and it is one piece',
    (name, styling, spacing) => {
      const { sheet } = sewn(drafted(name, styling), cotton, spacing);
      const sides = new Map<string, number>();
      const leader = Int32Array.from({ length: sheet.count }, (_, i) => i);
      const find = (i: number): number => (leader[i] === i ? i : find(leader[i] as number));
      for (let k = 0; k < sheet.triangles.length; k++) {
        const a = sheet.triangles[k] as number;
        const b = sheet.triangles[k - (k % 3) + ((k + 1) % 3)] as number;
        const key = `${Math.min(a, b)} ${Math.max(a, b)}`;
        sides.set(key, (sides.get(key) ?? 0) + 1);
        leader[find(a)] = find(b);
      }
      expect(Math.max(...sides.values())).toBe(2);
      expect(new Set(Array.from(leader, (_, i) => find(i))).size).toBe(1);
    },
  );

  it.each(cases)('%s %o, %d mm: answers left with right, point for point', (name, styling, spacing) => {
    const { mirror, sheet } = sewn(drafted(name, styling), cotton, spacing);
    const triangles = new Set<string>();
    const key = (points: readonly number[]): string => points.toSorted((a, b) => a - b).join(' ');
    for (let t = 0; t < sheet.triangles.length; t += 3)
      triangles.add(key([...sheet.triangles.subarray(t, t + 3)]));
    for (const [i, j] of mirror?.entries() ?? []) expect(mirror?.[j]).toBe(i);
    for (let t = 0; t < sheet.triangles.length; t += 3) {
      const image = [...sheet.triangles.subarray(t, t + 3)].map((p) => mirror?.[p] ?? -1);
      expect([name, triangles.has(key(image))]).toEqual([name, true]);
    }
  });

  it('has no mirror where left and right are sewn otherwise', () => {
    const garment = drafted('bodice', {});
    const seams = garment.seams.filter(({ name }) => name !== 'front princess, upper right');
    expect(sewn({ ...garment, seams }, cotton, 20).mirror).toBeUndefined();
  });

  it('has its folds in the middle', () => {
    const { mirror, panels } = sewn(drafted('bodice', { front: 'plain' }), cotton, 10);
    const middle = panels
      .filter(({ panel }) => panel.name === 'centre front')
      .map(({ points }) => new Set(points));
    const shared = [...(middle[0] ?? [])].filter((p) => middle[1]?.has(p));
    // Along the fold, and nowhere else.
    expect(shared.length).toBeGreaterThan(5);
    expect(shared.every((p) => mirror?.[p] === p)).toBe(true);
  });
});
