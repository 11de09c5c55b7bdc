import { describe, expect, it } from 'vitest';
import { bodyGrid } from '../plausible-bodies.ts';
import { drafted, figureOf, shippedBodies, shippedBody } from './drafted.ts';

// The bands are those of the shapes themselves, each with its source in the drafts' pages; the numbers are written
// out here so that moving a band does not move its test. All are measured on the pieces, never taken from the draft.

const family = [
  ['with straps and a puff', {}],
  [
    'with whole shoulders, a plain front and a plain sleeve',
    { shoulder: 'whole', front: 'plain', sleeve: 'plain' },
  ],
] as const;

describe.each(family)('the dress %s', (_, styling) => {
  describe.each(shippedBodies)('of %s', (name) => {
    const dress = drafted('dress', shippedBody(name), styling);
    const figure = (shape: string): number => figureOf(dress, shape);
    const figures = (ending: string): readonly number[] =>
      dress.report.shapes.filter((shape) => shape.name.endsWith(ending)).map(({ value }) => value);

    it('has a cap that traces its armhole to 5 mm from underarm to notch, in front and behind', () => {
      expect(figure('cap on front armhole')).toBeLessThan(5);
      expect(figure('cap on back armhole')).toBeLessThan(5);
    });

    it('has its notches high enough up the armhole that no ease or gathers come under the arm', () => {
      const [low, high] = 'sleeve' in styling ? [0.25, 0.35] : [1 / 3, 1 / 2];
      for (const notch of ['front armhole notch', 'back armhole notch']) {
        expect(figure(`${notch}, of the height of the armhole`)).toBeGreaterThan(low - 0.005);
        expect(figure(`${notch}, of the height of the armhole`)).toBeLessThan(high + 0.005);
      }
    });

    it('bends its armhole and its cap nowhere tighter than 25 mm', () => {
      for (const line of ['front armhole', 'back armhole', 'cap'])
        expect(figure(`${line}, tightest bend`)).toBeGreaterThan(25);
    });

    it('has the top of the cap and the grain of the sleeve within 10 mm of the shoulder notch', () => {
      expect(Math.abs(figure('cap top in front of the shoulder notch'))).toBeLessThan(10);
      expect(Math.abs(figure('sleeve grain in front of the shoulder notch'))).toBeLessThan(10);
    });

    it.skipIf('shoulder' in styling)('has straps as long as their paths over the shoulder, to 2 mm', () => {
      const { shapes } = dress.report;
      const paths = shapes.filter((shape) => shape.name.endsWith('edge on its path'));
      expect(paths).toHaveLength(2);
      for (const { value, low, high } of paths)
        expect(Math.abs(value - ((low ?? 0) + (high ?? 0)) / 2)).toBeLessThan(2);
    });

    it('has its side seam at the side of waist and hip, whatever the cup', () => {
      for (const level of ['waist', 'hip']) {
        expect(figure(`half front more than half back at the ${level}`)).toBeGreaterThan(-0.05);
        expect(figure(`half front more than half back at the ${level}`)).toBeLessThan(20.05);
      }
    });

    it('has a back that tapers evenly, without a hollow under the shoulder blades', () => {
      const { waistGirth, underBustGirth } = dress.body.size;
      // Where the waist is no smaller than the under-bust, the back bears its share of going in and out again.
      const tapers = waistGirth < underBustGirth;
      const hollow = figure('half back narrower at the under-bust than a straight taper');
      expect(hollow).toBeLessThan(tapers ? 10 : 25);
      const bend = figure('back princess, tightest bend below the bust level');
      expect(bend).toBeGreaterThan(tapers ? 150 : 100);
    });

    it('has no princess edge that leans more than 8 degrees at the waist', () => {
      for (const lean of figures('princess edge leans at the waist')) expect(lean).toBeLessThan(8.05);
    });

    it('has a level waist: no dip over 6 mm at centre front, or 15 where the waist is the larger girth', () => {
      const { waistGirth, underBustGirth } = dress.body.size;
      const dip = figure('waist at centre front below the princess seam');
      expect(Math.abs(dip)).toBeLessThan(waistGirth < underBustGirth ? 6 : 15);
    });

    it('has its front princess seam fullest within 10 mm of the bust point', () => {
      expect(Math.abs(figure('side front princess fullest above the bust point'))).toBeLessThan(10);
    });

    it('cuts no notch over 4 mm, nor over half its allowance', () => {
      expect(figure('deepest notch')).toBeLessThan(4.01);
      expect(figure('deepest notch, of its allowance')).toBeLessThan(0.501);
    });
  });
});

describe('a larger cup on the same bust, waist and hips', () => {
  const { underBustGirth: _, ...lady } = shippedBody('leading-lady');
  const dresses = ['A', 'C', 'E'].map((cup) => drafted('dress', { ...lady, cup }));

  it.each(['waist', 'hip'])('moves the side seam by less than 2 mm from A to E at the %s', (level) => {
    const balances = dresses.map((dress) =>
      figureOf(dress, `half front more than half back at the ${level}`),
    );
    expect(Math.max(...balances) - Math.min(...balances)).toBeLessThan(2);
  });
});

it('is drafted true for every body of the grid: nobody is refused for an armhole that a wish cannot have', () => {
  const untrue = [...bodyGrid()].filter((body) => !drafted('dress', body).report.ok);
  expect(untrue).toEqual([]);
});
