import { describe, expect, it } from 'vitest';
import { skirtRules } from '../../../drafts/skirt/rules.ts';
import { signedArea } from '../../../engine/geometry/outline.ts';
import { drafted, pieceOf } from '../drafted.ts';
import { apart, gores, inches, lengthOf, sectorsOf } from './measured.ts';

/**
 * A gored skirt with the waist, hip and hem of so much of a circle: the waist is an arc of radius W / (2 pi f), and at a
 * distance L from it the girth is W + 2 pi f L (closed form). Lengths in mm.
 */
function cutLikeCircle(part: number, waist: number, toHip: number, length: number) {
  const at = (distance: number) => waist + 2 * Math.PI * part * distance;
  const hipGirth = at(toHip) - 60;
  const { sideRise, leastRise, mostRise } = skirtRules;
  const rise = Math.min(Math.max(sideRise.value * (hipGirth - waist), leastRise.value), mostRise.value);
  const body = {
    name: 'circle',
    units: 'mm',
    bustGirth: 900,
    backNeckPointToWaist: 400,
    waistGirth: waist,
    hipGirth,
    waistToHip: toHip + rise,
  };
  const styling = { waistEase: 0, hipEase: 60, skirtLength: length, hemSweep: at(length) };
  return { at, skirt: drafted('skirt', body, styling) };
}

// Rosenfeld, The Practical Designer, 1911, p. 139: waist 25 in, hip line 6 in below it, 41 in long in front. A whole circle
// sweeps 7.2 m, beyond what a skirt in six gores is drawn to; the half and the quarter of it are.
const skirts = [
  { name: 'a quarter circle, waist 70 cm', part: 1 / 4, waist: 700, toHip: 200, length: 600 },
  { name: 'half a circle, waist 70 cm', part: 1 / 2, waist: 700, toHip: 200, length: 600 },
  { name: 'a quarter of Rosenfeld’s', part: 1 / 4, waist: inches(25), toHip: inches(6), length: inches(41) },
  { name: 'half of Rosenfeld’s', part: 1 / 2, waist: inches(25), toHip: inches(6), length: inches(41) },
].map((of) => ({ ...of, ...cutLikeCircle(of.part, of.waist, of.toHip, of.length) }));

describe('a circle skirt cut in gores', () => {
  it.each(skirts)(
    'keeps the circle’s waist, and its sweep W + 2 pi f L: $name',
    ({ waist, length, at, skirt }) => {
      const round = (edge: string) => gores.reduce((sum, gore) => sum + 2 * lengthOf(skirt, gore, edge), 0);
      expect(round('waist')).toBeCloseTo(waist, 3);
      expect(round('hem')).toBeCloseTo(at(length), 3);
      expect(skirt.report.ok).toBe(true);
    },
  );

  it('of waist 70 and length 60 cm has a hem of 164.2478 cm for a quarter circle, 258.4956 for half of one', () => {
    const hems = skirts
      .slice(0, 2)
      .map(({ skirt }) => skirt.report.girths.find(({ level }) => level === 'hem'));
    expect(hems[0]?.finished).toBeCloseTo(1642.478, 2);
    expect(hems[1]?.finished).toBeCloseTo(2584.956, 2);
  });

  // A gore with seams that lean out by an angle a each is a sector: over a distance s its girth grows by a s.
  it.each(skirts)(
    'grows from hip to hem by its angle times the distance, gore by gore: $name',
    ({ skirt }) => {
      for (const [i, { out, lean, below, times }] of sectorsOf(skirt).entries()) {
        const hip = (out * lean) / Math.sin(lean);
        const hem = (2 * lengthOf(skirt, gores[i] ?? '', 'hem')) / times;
        expect(hem - hip).toBeCloseTo(lean * below, 4);
      }
    },
  );

  // All gores together open as far as the circle: their hip levels are arcs as its own is.
  it.each(skirts)('opens as far as the circle when its gores are laid together: $name', ({ part, skirt }) => {
    const angle = sectorsOf(skirt).reduce((sum, { lean, times }) => sum + lean * times, 0);
    expect(angle / (2 * Math.PI * part)).toBeCloseTo(1, 9);
  });

  // Area pi f ((r + L)^2 - r^2), r = W / (2 pi f). Ours is a little larger: its waist rises to the side by up to 2 cm.
  it.each(skirts)('takes as much cloth as the circle, to 2 %%: $name', ({ part, waist, length, skirt }) => {
    const area = gores.reduce((sum, gore) => sum + 2 * signedArea(pieceOf(skirt, gore).edges), 0);
    const radius = waist / (2 * Math.PI * part);
    const circle = Math.PI * part * ((radius + length) ** 2 - radius ** 2);
    expect(apart(area, circle) / circle).toBeLessThan(0.02);
  });
});
