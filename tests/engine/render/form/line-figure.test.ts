import { describe, expect, test } from 'vitest';
import { lineFigure } from '../../../../engine/render/form/line-figure.ts';
import { viewNames } from '../../../../engine/render/form/view.ts';
import { formOf } from '../../form/people.ts';

const form = formOf('leading-lady');

/** The places that a path runs through. */
const places = (d: string): readonly (readonly [x: number, y: number])[] =>
  [...d.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);

const span = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);

describe('a form in lines', () => {
  test.each(viewNames)('has contours that reach as far as it does, from the %s', (view) => {
    const figure = lineFigure(form, view);
    const drawn = places(figure.contours);
    expect(span(drawn.map(([x]) => x))).toBeCloseTo(figure.width, 0);
    expect(span(drawn.map(([, y]) => y))).toBeGreaterThan(figure.height - 5);
  });

  test('is as broad at the hips and as deep as the tape that is laid there', () => {
    const level = form.tapes.find(({ measurement }) => measurement === 'hipGirth');
    const across = span(level?.points.map(([x]) => x) ?? []);
    const through = span(level?.points.map(([, , z]) => z) ?? []);
    // A level tape of a girth lies between a circle and a flat band: breadth and depth bound it (common knowledge).
    expect(2 * Math.hypot(across, through)).toBeLessThan(level?.length ?? 0);
    const seen = lineFigure(form, 'front').tapes.find(({ measurement }) => measurement === 'hipGirth');
    expect(span(places(seen?.d ?? '').map(([x]) => x))).toBeCloseTo(across, -1);
  });

  test('shows the tape down the back from behind, and that to the bust point from before', () => {
    const names = (view: (typeof viewNames)[number]) =>
      lineFigure(form, view).tapes.map(({ measurement }) => measurement);
    expect(names('back')).toContain('backNeckPointToWaist');
    expect(names('front')).not.toContain('backNeckPointToWaist');
    expect(names('front')).toContain('neckShoulderPointToBustPoint');
  });
});
