import { expect, it } from 'vitest';
import type { WovenCloth } from '../../../engine/cloth/cloth.ts';
import { cloths } from '../../../engine/cloth/cloths.ts';
import { type Findings, findingsOf } from '../../../engine/wear/findings.ts';
import { standFor } from '../../../engine/wear/stand-for.ts';
import { worn } from '../../../engine/wear/worn.ts';
import { drafted, shippedBody } from '../../drafts/drafted.ts';

// A mesh half as fine again must tell the same. That 3 mm are no matter at a fitting is common practice, no source.

const cotton = cloths.find(({ name }) => name === 'cotton') as WovenCloth;

/** A tape round loose cloth lies on its folds, which fall otherwise on every mesh: up to 4 mm between 7, 10 and 14 mm. */
const ON_FOLDS = 5;

function found(spacing: number): Findings {
  const { garment, body } = drafted('bodice', shippedBody('leading-lady'));
  const { stand } = standFor(garment, body);
  return findingsOf(garment, worn(garment, cotton, stand, spacing), stand);
}

it('no figure moves by over 3 mm from a mesh of 14 mm to one of 10, but for the ease, which folds take some of', () => {
  const [coarse, fine] = [found(14), found(10)];
  const figures = ({
    waistLevel,
    bustPoint,
    side,
    gaps,
  }: Findings): readonly (readonly [string, number])[] => [
    ...waistLevel.map(({ at, above }) => [at, above] as const),
    ['bust point across', bustPoint?.across ?? Number.NaN],
    ['bust point up', bustPoint?.up ?? Number.NaN],
    ['side seam at the waist', side?.atWaist ?? Number.NaN],
    ...gaps.flatMap(({ edge, most, longer }) => [
      [edge, most] as const,
      [`${edge}, longer`, longer] as const,
    ]),
  ];
  const known = new Map(figures(coarse));
  expect(known.size).toBe(18);
  for (const [name, figure] of figures(fine))
    expect([name, Math.abs(figure - (known.get(name) ?? Number.NaN)) < 3]).toEqual([name, true]);
  for (const { level, worn: now } of fine.ease) {
    const before = coarse.ease.find((each) => each.level === level)?.worn ?? Number.NaN;
    expect([level, Math.abs(now - before) < ON_FOLDS]).toEqual([level, true]);
  }
}, 180_000);
