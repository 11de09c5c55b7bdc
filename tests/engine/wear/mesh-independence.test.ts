import { describe, expect, it } from 'vitest';
import { bodice } from '../../../drafts/whole-bodice.ts';
import type { WovenCloth } from '../../../engine/cloth/cloth.ts';
import { cloths } from '../../../engine/cloth/cloths.ts';
import { evaluate } from '../../../engine/evaluate.ts';
import { findingsOf } from '../../../engine/wear/findings.ts';
import { standFor } from '../../../engine/wear/stand-for.ts';
import { worn } from '../../../engine/wear/worn.ts';
import { shippedBody } from '../../drafts/drafted.ts';

const cotton = cloths.find(({ name }) => name === 'cotton') as WovenCloth;

/** All figures in mm that are told of a body's bodice, on triangles of each size. */
function figures(body: string, meshes: readonly number[]): ReadonlyMap<string, readonly number[]> {
  const made = evaluate(bodice, shippedBody(body));
  if (!made.ok) throw new Error('not drafted');
  const { garment } = made.value;
  const { stand } = standFor(garment, made.value.body);
  const all = new Map<string, number[]>();
  for (const mesh of meshes) {
    const { ease, waistLevel, bustPoint, side, gaps } = findingsOf(
      garment,
      worn(garment, cotton, stand, mesh),
      stand,
    );
    const told: readonly (readonly [string, number | undefined])[] = [
      ...ease.map((each) => [`ease at the ${each.level}`, each.worn] as const),
      ...waistLevel.map(({ at, above }) => [`waist at the ${at}`, above] as const),
      ['bust point across', bustPoint?.across],
      ['bust point up', bustPoint?.up],
      ['side seam at the waist', side?.atWaist],
      ...gaps.flatMap(({ edge, most, mean, longer }) =>
        Object.entries({ most, mean, longer }).map(([what, mm]) => [`${edge}, ${what}`, mm] as const),
      ),
    ];
    for (const [name, mm = Number.NaN] of told) all.set(name, [...(all.get(name) ?? []), mm]);
  }
  return all;
}

describe('what is found on a bodice', () => {
  it.each(['understudy'])(
    'on the %s, is the same within 3 mm on triangles of 7, 10 and 14 mm',
    (body) => {
      for (const [name, told] of figures(body, [7, 10, 14]))
        expect([name, Math.max(...told) - Math.min(...told) <= 3]).toEqual([name, true]);
    },
    300_000,
  );
});
