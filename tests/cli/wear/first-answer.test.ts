import { expect, it } from 'vitest';
import { quickWithin } from '../../../cli/wear/worn-said.ts';
import { bodice } from '../../../drafts/whole-bodice.ts';
import type { WovenCloth } from '../../../engine/cloth/cloth.ts';
import { cloths } from '../../../engine/cloth/cloths.ts';
import { evaluate } from '../../../engine/evaluate.ts';
import { bodyForm } from '../../../engine/form/body-form.ts';
import { type Findings, findingsOf } from '../../../engine/wear/findings.ts';
import { standOfForm } from '../../../engine/wear/stand-of-form.ts';
import { worn } from '../../../engine/wear/worn.ts';
import { shippedBody } from '../../drafts/drafted.ts';

it('a first answer lies as near to a finer one as it says', () => {
  const made = evaluate(bodice, shippedBody('leading-lady'));
  if (!made.ok) throw new Error('not drafted');
  const { garment, body } = made.value;
  const stand = standOfForm(bodyForm(body));
  const [quick, fine] = [20, 12].map((spacing) =>
    findingsOf(garment, worn(garment, cloths[1] as WovenCloth, stand, spacing), stand),
  ) as [Findings, Findings];
  const near = (one: readonly number[], other: readonly number[], within: number): void => {
    expect(one.length).toBeGreaterThan(0);
    for (const [i, value] of one.entries())
      expect(Math.abs(value - (other[i] ?? Number.NaN))).toBeLessThan(within);
  };
  const each = (of: (found: Findings) => readonly number[], within: number) =>
    near(of(quick), of(fine), within);
  each(({ ease }) => ease.map((level) => level.worn), Math.min(8, quickWithin.ease));
  each(({ waistLevel }) => waistLevel.map(({ above }) => above), quickWithin.level);
  // Three armholes, of fuller bodies, are all that make it say 20.
  each(({ gaps }) => gaps.map(({ most }) => most), Math.min(10, quickWithin.gap));
  each(({ bustPoint }) => (bustPoint ? [bustPoint.across, bustPoint.up] : []), quickWithin.bustPoint);
  each(({ side }) => (side ? [side.atWaist] : []), quickWithin.side);
});
