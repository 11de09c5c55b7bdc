import { expect, it } from 'vitest';
import type { WovenCloth } from '../../../engine/cloth/cloth.ts';
import { cloths } from '../../../engine/cloth/cloths.ts';
import { findingsOf } from '../../../engine/wear/findings.ts';
import { standFor } from '../../../engine/wear/stand-for.ts';
import { worn } from '../../../engine/wear/worn.ts';
import { drafted, shippedBody } from '../../drafts/drafted.ts';

// Drawn no lower in front and at the side than behind, waists hung high there, by what the second number says. On paper they may
// dip by 15 mm from the side seam to the centre front, by 6 where the waist is smaller than the ribs (common practice, no source).

const cotton = cloths.find(({ name }) => name === 'cotton') as WovenCloth;

it.each([
  ['front-of-house', 18, 27],
  ['stage-manager', 11, 15],
  ['prompter', 13, 16],
  ['lighting-operator', 10, 17],
])(
  'the waist of the bodice hangs near hers all round: %s, within %i mm (%i)',
  (name, within) => {
    const { garment, body } = drafted('bodice', shippedBody(name));
    const { stand } = standFor(garment, body);
    const { waistLevel } = findingsOf(garment, worn(garment, cotton, stand, 20), stand);
    expect(waistLevel.length).toBe(5);
    for (const { at, above } of waistLevel) expect(Math.abs(above), at).toBeLessThan(within);
  },
  180_000,
);

// With 60 mm of ease at the hip whatever the flare, the skirt was caught above the hip and rode up: the second number.
it.each([
  ['front-of-house', 7, 9],
  ['stage-manager', 9, 11],
])(
  'a flared skirt has room at the hip and lifts no waist: %s, at the side and behind within %i mm (%i)',
  (name, within) => {
    const { garment, body } = drafted('dress', shippedBody(name), { sleeve: 'none' });
    const { stand } = standFor(garment, body);
    const { waistLevel } = findingsOf(garment, worn(garment, cotton, stand, 14), stand);
    for (const at of ['side seam', 'back princess seam', 'centre back'])
      expect(waistLevel.find((each) => each.at === at)?.above, at).toBeLessThan(within);
  },
  180_000,
);
