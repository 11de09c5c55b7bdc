import { describe, expect, it } from 'vitest';
import type { WovenCloth } from '../../../engine/cloth/cloth.ts';
import { cloths } from '../../../engine/cloth/cloths.ts';
import { type Findings, findingsOf } from '../../../engine/wear/findings.ts';
import { standFor } from '../../../engine/wear/stand-for.ts';
import { worn } from '../../../engine/wear/worn.ts';
import { drafted, shippedBody } from '../../drafts/drafted.ts';

// On straps without sleeves the ease of the bust gathered in a fold at the front armhole, which stood off by 18 to 61 mm, as the
// last number of each says. That a fitter folds it out towards the bust point is common practice, no source.

const cotton = cloths.find(({ name }) => name === 'cotton') as WovenCloth;

const known = new Map<string, Findings>();

function found(name: string): Findings {
  const before = known.get(name);
  if (before) return before;
  const { garment, body } = drafted('bodice', shippedBody(name));
  const { stand } = standFor(garment, body);
  const findings = findingsOf(garment, worn(garment, cotton, stand, 14), stand);
  known.set(name, findings);
  return findings;
}

/** Hanging takes seconds, and longer where other tests run beside it. */
const SLOW = 180_000;

describe('the bodice on straps without sleeves, worn', () => {
  it.each([
    ['front-of-house', 22, 27],
    ['leading-lady', 21, 24],
    ['lighting-operator', 21, 27],
    ['prompter', 13, 18],
    ['stage-manager', 9, 14],
    ['understudy', 21, 26],
  ])(
    'has its front armhole nearer to the body: %s, within %i mm (%i)',
    (name, within) => {
      const armhole = found(name).gaps.find(({ edge }) => edge === 'front armhole');
      expect(armhole?.most).toBeLessThan(within);
    },
    SLOW,
  );

  it.each([
    ['leading-lady', 3, 3],
    ['understudy', 8, 10],
  ])(
    'hangs level all round, or nearer to it: %s, within %i mm (%i)',
    (name, within) => {
      for (const { at, above } of found(name).waistLevel) expect(Math.abs(above), at).toBeLessThan(within);
    },
    SLOW,
  );

  it.each([
    ['scene-painter', 7, 15],
    ['wardrobe-mistress', 6, 11],
  ])(
    'does not draw its back up over the shoulders of a full bust: %s, by less than %i mm (%i)',
    (name, within) => {
      const behind = found(name).waistLevel.filter(({ at }) => /back/.test(at));
      expect(behind).toHaveLength(2);
      for (const { at, above } of behind) expect(Math.abs(above), at).toBeLessThan(within);
    },
    SLOW,
  );
});
