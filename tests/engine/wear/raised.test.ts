import { describe, expect, it } from 'vitest';
import { garments } from '../../../drafts/garments.ts';
import type { WovenCloth } from '../../../engine/cloth/cloth.ts';
import { cloths } from '../../../engine/cloth/cloths.ts';
import { toTheEnd } from '../../../engine/cloth/equilibrium.ts';
import { evaluate } from '../../../engine/evaluate.ts';
import type { ArmsRaised } from '../../../engine/wear/findings.ts';
import { type Raised, raising } from '../../../engine/wear/raised.ts';
import { formRaised, standFor } from '../../../engine/wear/stand-for.ts';
import { worn } from '../../../engine/wear/worn.ts';
import { shippedBody } from '../../drafts/drafted.ts';
import { topOf } from './top-of.ts';

const cotton = cloths.find(({ name }) => name === 'cotton') as WovenCloth;

function raised(styling: Record<string, unknown>): Raised | undefined {
  const dress = garments.find(({ name }) => name === 'dress');
  const made = dress && evaluate(dress, shippedBody('leading-lady'), styling);
  if (!made?.ok) throw new Error('not drafted');
  const { body } = made.value;
  const garment = topOf(made.value.garment);
  const { stand } = standFor(garment, body);
  const hung = worn(garment, cotton, stand, 20);
  return toTheEnd(raising(garment, hung, stand, (rise) => formRaised(body, rise)));
}

const at = (found: ArmsRaised | undefined, place: string): number =>
  found?.lift.find((each) => each.at === place)?.by ?? Number.NaN;

// Where a cutter looks, common practice, no source: a raised arm draws the bodice up by the side seam, and a plain, high cap
// more than a full or a low one.
describe('a bodice with sleeves whose arms are raised to 45 degrees', () => {
  const whole = { front: 'plain', shoulder: 'whole' };
  const plain = raised({ ...whole, sleeve: 'plain' });

  it('comes to rest, its sleeves round the arms', () => {
    expect(plain?.found.to).toBe(45);
    expect(plain?.hung.settled.atRest).toBe(true);
    const [shoulder, wrist] = [plain?.form.landmarks.shoulderPoint, plain?.form.landmarks.wristPoint];
    const { x = new Float64Array(), sewn } = plain?.hung ?? {};
    for (const { panel, points } of sewn?.panels ?? []) {
      if (panel.name !== 'sleeve' || panel.side !== 'left') continue;
      const off = Array.from(points, (p) => {
        const [dx, dy] = [
          (x[3 * p] as number) - (shoulder?.[0] ?? 0),
          (x[3 * p + 1] as number) - (shoulder?.[1] ?? 0),
        ];
        const [wx, wy] = [(wrist?.[0] ?? 0) - (shoulder?.[0] ?? 0), (wrist?.[1] ?? 0) - (shoulder?.[1] ?? 0)];
        return Math.abs(dx * wy - dy * wx) / Math.hypot(wx, wy);
      });
      // No cloth is left where the arm was.
      expect(Math.max(...off)).toBeLessThan(170);
    }
  });

  it('is lifted, most at the side, and says how far an arm rises before', () => {
    expect(at(plain?.found, 'side seam')).toBeGreaterThan(15);
    expect(at(plain?.found, 'side seam')).toBeGreaterThan(at(plain?.found, 'centre front') + 10);
    expect(plain?.found.free).toBeGreaterThan(20);
    expect(plain?.found.free).toBeLessThan(40);
  });

  it('is hardly lifted by a puffed sleeve', () => {
    const puffed = raised({ ...whole, sleeve: 'puff' });
    for (const { at, by } of puffed?.found.lift ?? []) expect([at, Math.abs(by) < 5]).toEqual([at, true]);
    expect(puffed?.found).toMatchObject({ to: 45, free: 45 });
  });

  it('is lifted less by a wider sleeve with a lower cap', () => {
    const low = raised({ ...whole, sleeve: 'plain', upperArmEase: 90 });
    expect(at(low?.found, 'side seam')).toBeLessThan(at(plain?.found, 'side seam') - 8);
    expect(low?.found.free).toBeGreaterThan((plain?.found.free ?? 99) + 3);
  });

  it('is none where there are no sleeves', () => {
    expect(raised({ ...whole, sleeve: 'none' })).toBeUndefined();
  });
});
