import { describe, expect, it } from 'vitest';
import { garments } from '../../../drafts/garments.ts';
import type { WovenCloth } from '../../../engine/cloth/cloth.ts';
import { cloths } from '../../../engine/cloth/cloths.ts';
import { triangleAreas } from '../../../engine/cloth/sheet.ts';
import { evaluate } from '../../../engine/evaluate.ts';
import type { Garment } from '../../../engine/pattern/garment.ts';
import { type Findings, findingsOf } from '../../../engine/wear/findings.ts';
import { notWorn } from '../../../engine/wear/panel-levels.ts';
import { standFor } from '../../../engine/wear/stand-for.ts';
import { type Worn, worn } from '../../../engine/wear/worn.ts';
import { shippedBody } from '../../drafts/drafted.ts';
import { topOf } from './top-of.ts';

const cotton = cloths.find(({ name }) => name === 'cotton') as WovenCloth;

function put(
  name: string,
  styling: object,
  more: object = {},
  of = (whole: Garment): Garment => whole,
  mesh = 20,
  who = 'leading-lady',
): { hung: Worn; found: Findings } {
  const draft = garments.find((each) => each.name === name);
  const made = draft && evaluate(draft, { ...(shippedBody(who) as object), ...more }, styling);
  if (!made?.ok) throw new Error('not drafted');
  const { body } = made.value;
  const garment = of(made.value.garment);
  expect(notWorn(garment)).toEqual([]);
  const { stand } = standFor(garment, body);
  const hung = worn(garment, cotton, stand, mesh);
  expect(hung.settled.atRest).toBe(true);
  return { hung, found: findingsOf(garment, hung, stand) };
}

const above = ({ waistLevel }: Findings, at: string): number =>
  waistLevel.find((each) => each.at === at)?.above ?? Number.NaN;

describe('a skirt alone', () => {
  // One with more room there hangs lower still.
  const closeOverHip = { hipEase: 60 };
  const eased = put('skirt', { waistEase: 30, ...closeOverHip }, {}, undefined, 14).found;
  const close = put('skirt', { waistEase: 0, ...closeOverHip }, {}, undefined, 14).found;
  const places = ['centre front', 'front princess seam', 'side seam', 'back princess seam', 'centre back'];

  it('hangs from where the body is as large as its waist: below hers, and the lower the more ease it has', () => {
    for (const at of places) {
      expect([at, above(close, at) < 2]).toEqual([at, true]);
      expect([at, above(close, at) > -30]).toEqual([at, true]);
      expect([at, above(eased, at) < above(close, at) - 1]).toEqual([at, true]);
    }
    expect(above(eased, 'side seam')).toBeGreaterThan(-30);
  });

  // A skirt's waist is cut lower behind, common practice, no source: over the seat it is drawn down there.
  it('sinks behind more than in front', () => {
    for (const found of [eased, close])
      expect(above(found, 'centre back')).toBeLessThan(above(found, 'centre front') - 5);
  });

  it('is strained nowhere, and its side seam hangs within 15 mm of her side and near plumb', () => {
    for (const { strain, side } of [eased, close]) {
      for (const { most } of strain) expect(most).toBeLessThan(0.02);
      expect(Math.abs(side?.atWaist ?? 99)).toBeLessThan(18);
      expect(Math.abs(side?.lean ?? 99)).toBeLessThan(6);
    }
  });
});

describe('a bodice whose left and right differ', () => {
  const lower = { fitting: [{ 'lower shoulder': 2, side: 'left' }] };
  const { hung, found } = put('bodice', {}, lower, undefined, 14);

  // The form is alike on both sides: where a shoulder is cut lower the bodice is short above and drawn up, common practice.
  it('rides up on the side whose shoulder is cut lower than that of the form', () => {
    expect(above(found, 'front princess seam, left')).toBeGreaterThan(
      above(found, 'front princess seam, right') + 2,
    );
    expect(above(found, 'side seam, left')).toBeGreaterThan(above(found, 'side seam, right') + 0.8);
  });

  it('is the mirror image of the same on the other side, to what a mesh across the middle differs by', () => {
    const on14 = (side: string): Findings =>
      put('bodice', {}, { fitting: [{ 'lower shoulder': 1, side }] }, undefined, 14).found;
    const [one, other] = [on14('left'), on14('right')];
    for (const place of ['front princess seam', 'side seam', 'back princess seam']) {
      expect(Math.abs(above(one, `${place}, left`) - above(other, `${place}, right`))).toBeLessThan(1);
      expect(Math.abs(above(one, `${place}, right`) - above(other, `${place}, left`))).toBeLessThan(1);
    }
  });

  it('wears each of its pieces on its own side', () => {
    for (const { panel, points } of hung.sewn.panels) {
      const across = points.reduce((sum, p) => sum + (hung.x[3 * p] as number), 0) / points.length;
      if (panel.side !== 'whole')
        expect([panel.name, across > 0]).toEqual([panel.name, panel.side === 'left']);
      const one = panel.piece.oneOf;
      if (one) expect(panel.side).toBe(one.side);
    }
  });

  it('hangs by whole shoulders too, with one sleeve wider than the other', () => {
    const wider = { fitting: [{ 'more upper arm': 2, side: 'left' }] };
    const { hung: sleeved } = put(
      'dress',
      { front: 'plain', shoulder: 'whole', sleeve: 'plain' },
      wider,
      topOf,
    );
    const cloth = (side: string): number =>
      sleeved.sewn.panels
        .filter(({ panel }) => panel.pair === 'sleeve' && panel.side === side)
        .flatMap(({ triangles: [first, count] }) =>
          Array.from(triangleAreas(sleeved.sewn.sheet).subarray(first, first + count)),
        )
        .reduce((sum, area) => sum + area, 0);
    expect(cloth('left')).toBeGreaterThan(1.02 * cloth('right'));
  });
});

describe('a bodice with whole shoulders that was caught in a fold above the bust on one mesh of two', () => {
  const whole = { front: 'plain', shoulder: 'whole' };

  // Without a pull and friction its two rests lay 12 mm apart all round, its bust point 16 mm.
  it('comes to rest in one place on both', () => {
    const [coarse, finer] = [20, 17].map((mesh) => put('bodice', whole, {}, undefined, mesh, 'understudy'));
    for (const { at, above: up } of coarse?.found.waistLevel ?? [])
      expect(Math.abs(up - above(finer?.found as Findings, at))).toBeLessThan(2);
    const [one, other] = [coarse?.found.bustPoint, finer?.found.bustPoint];
    expect(
      Math.hypot((one?.across ?? 99) - (other?.across ?? 0), (one?.up ?? 99) - (other?.up ?? 0)),
    ).toBeLessThan(3);
  });
});
