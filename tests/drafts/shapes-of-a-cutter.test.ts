import { describe, expect, it } from 'vitest';
import { thisBody } from '../../drafts/bodice/outside-bands.ts';
import type { ShapeReport } from '../../engine/checks/report.ts';
import type { Evaluation } from '../../engine/evaluate.ts';
import { edgeLength, endDirection, startDirection } from '../../engine/geometry/edge.ts';
import { edgeCrossings } from '../../engine/geometry/intersect.ts';
import { type Point, point } from '../../engine/geometry/point.ts';
import { heading } from '../../engine/geometry/vector.ts';
import { bodyGrid } from '../plausible-bodies.ts';
import { drafted, edgeOf, placedOn, shippedBodies, shippedBody, stepOf } from './drafted.ts';
import { family, type Styled, styleNames } from './family.ts';

// What a cutter looks at on the written pieces, and what right would be. Each of these was once found wrong on bodies that
// walked true; the figure it had then for the leading lady stands beside it.

/** Every 37th of the grid: busts from 75 to 150 cm, all cups, all statures. */
const gridSample = bodyGrid().filter((_, i) => i % 37 === 0);

const bodies: readonly (readonly [name: string, body: unknown])[] = [
  ...shippedBodies.map((name) => [name, shippedBody(name)] as const),
  ...gridSample.map((body) => [String(body.name), body] as const),
];

const garments = {
  dress: (body: unknown) => drafted('dress', body),
  'plain dress': (body: unknown) =>
    drafted('dress', body, { shoulder: 'whole', front: 'plain', sleeve: 'plain' }),
  trial: (body: unknown) => drafted('trial', body, { sleeve: 'plain' }),
};

const made = Object.entries(garments).flatMap(([garment, draft]) =>
  bodies.map(([name, body]) => ({ garment, of: `${garment}, ${name}`, made: draft(body) })),
);

const shapesNamed = ({ report }: Evaluation, pattern: RegExp): readonly ShapeReport[] =>
  report.shapes.filter(({ name }) => pattern.test(name));

/** Looks at every figure of some name on everything that was made, and that there are so many on each. */
function everyFigure(
  pattern: RegExp,
  count: number,
  look: (value: number, of: string, evaluation: Evaluation) => void,
  on: readonly (keyof typeof garments)[] = ['dress', 'plain dress', 'trial'],
): void {
  for (const { garment, of, made: evaluation } of made) {
    if (!on.some((name) => name === garment)) continue;
    const found = shapesNamed(evaluation, pattern);
    expect(found.map(({ name }) => name).length, `${of}: ${pattern}`).toBe(count);
    for (const { name, value } of found) look(value, `${name}: ${of}`, evaluation);
  }
}

const within = (low: number, high: number) => (value: number, of: string) => {
  expect(value, of).toBeGreaterThanOrEqual(low);
  expect(value, of).toBeLessThanOrEqual(high);
};

describe('a sleeve and its armhole', () => {
  it('trace each other within 5 mm from underarm to notch, front and back (34 mm apart in front)', () => {
    everyFigure(/^cap on (front|back) armhole$/, 2, within(0, 5));
  });

  it('of a puff have their notches a third to half up the armhole, strap included (0.13 in front)', () => {
    everyFigure(/armhole notch, of the height/, 2, within(1 / 3, 1 / 2), ['dress']);
  });

  it('of a plain sleeve have their notches a quarter to 0.35 up the armhole', () => {
    everyFigure(/armhole notch, of the height/, 2, within(0.25, 0.35), ['plain dress', 'trial']);
  });

  it('bend nowhere tighter than 25 mm (19 to 24 mm on three of the eight bodies)', () => {
    everyFigure(/^((front|back) armhole|cap), tightest bend$/, 3, within(25, Infinity));
  });

  it('meet with cap top and grain within 10 mm of the shoulder notch (39 mm in front of it)', () => {
    everyFigure(/in front of the shoulder notch$/, 2, within(-10, 10));
  });
});

describe('a strap', () => {
  it('has each edge within 2 mm of its path over the shoulder (38 mm off at the armhole)', () => {
    for (const { of, made: dress } of made.filter(({ garment }) => garment === 'dress')) {
      const edges = shapesNamed(dress, /^strap, (inner|outer) edge on its path$/);
      expect(edges).toHaveLength(2);
      for (const { name, value, low = 0, high = 0, bound } of edges) {
        expect(high - low, of).toBeCloseTo(4, 9);
        expect(bound, of).toBe(true);
        within(low, high)(value, `${name}: ${of}`);
      }
    }
  });

  it('is no rectangle where its path is none', () => {
    for (const { of, made: dress } of made.filter(({ garment }) => garment === 'dress')) {
      const [inner, outer] = ['inner', 'outer'].map((edge) =>
        ['front strap', 'back strap'].reduce((sum, piece) => sum + edgeLength(edgeOf(dress, piece, edge)), 0),
      );
      expect(Math.abs((inner ?? 0) - (outer ?? 0)), of).toBeGreaterThan(1);
    }
  });
});

describe('the side seam', () => {
  const balances = /^half front more than half back at the (waist|hip)$/;

  it('has 0 to 20 mm more in front of it than behind, half a body, at waist and hip (37 and 26 mm)', () => {
    everyFigure(balances, 2, within(0, 20), ['dress', 'plain dress']);
    everyFigure(balances, 1, within(0, 20), ['trial']);
  });

  it.each([
    ['regular girths', { bustGirth: 92, waistGirth: 74, hipGirth: 99 }],
    ['a waist no smaller than the ribs', { bustGirth: 110, waistGirth: 96, hipGirth: 116 }],
    ['small girths', { bustGirth: 80, waistGirth: 62, hipGirth: 88 }],
  ])('is moved at waist and hip by no cup, A to E, by 2 mm: %s (42 mm)', (_, girths) => {
    for (const draft of Object.values(garments)) {
      const found = ['A', 'B', 'C', 'D', 'E'].map((cup) =>
        shapesNamed(
          draft({ name: cup, units: 'cm', ...girths, backNeckPointToWaist: 40.5, stature: 167, cup }),
          balances,
        ).map(({ value }) => value),
      );
      for (const i of found[0]?.keys() ?? []) {
        const moved = found.map((values) => values[i] ?? Number.NaN);
        expect(Math.max(...moved) - Math.min(...moved)).toBeLessThan(2);
      }
    }
  });
});

describe('the back', () => {
  it('tapers evenly to the waist where that is smaller than the ribs, within 10 mm (18 mm hollow)', () => {
    everyFigure(/^half back narrower at the under-bust/, 1, (value, of, { body: { size } }) => {
      if (size.waistGirth < size.underBustGirth) within(-Infinity, 10)(value, of);
    });
  });

  it('gives in under the bust by no more than the stated amounts where the waist is no smaller', () => {
    everyFigure(/^half back narrower at the under-bust/, 1, within(-Infinity, 16 + 6 + 2));
  });

  it.each([
    ['dress', 120],
    ['plain dress', 95],
    ['trial', 95],
  ] as const)(
    'has no hollow under the bust level with a radius under 150 mm, or where it gives in: %s, %i mm (62 mm)',
    (garment, givesIn) => {
      everyFigure(
        /^back princess, tightest bend below the bust level$/,
        1,
        (value, of, { body: { size } }) => {
          within(size.waistGirth < size.underBustGirth ? 150 : givesIn, Infinity)(value, of);
        },
        [garment],
      );
    },
  );
});

describe('the princess seams', () => {
  it('lean no more than 8 degrees from the grain at the waist, on any panel (17 on the side front)', () => {
    everyFigure(/princess edge leans at the waist$/, 4, within(0, 8));
  });

  it('of the front are fullest within 10 mm of the bust point (14 mm above it)', () => {
    everyFigure(/^side front princess fullest above the bust point$/, 1, within(-10, 10));
  });

  it.each(shippedBodies)(
    'sew in the angle over the bust that cup and front length of the %s ask for, within 5 degrees (6 too few)',
    (name) => {
      const [shape] = shapesNamed(drafted('dress', shippedBody(name)), /^angle sewn in over the bust$/);
      const asked = ((shape?.low ?? 0) + (shape?.high ?? 0)) / 2;
      expect(Math.abs((shape?.value ?? 0) - asked)).toBeLessThan(5);
    },
  );
});

describe('a plain front', () => {
  // Its angle over the bust is more than two cones ask for, since both edges bend round: in cloth that is little.
  it('is hardly wider or narrower between bust and under-bust than straight princess edges would make it', () => {
    for (const { garment, of, made: evaluation } of made) {
      if (garment === 'dress') continue;
      const bust = stepOf(evaluation, 'Bust level');
      const [atCentre, atSide] = ['centre', 'side'].map((panel) =>
        placedOn(evaluation, 'front', `${panel} front panel under the bust`),
      ) as [Point, Point];
      const underBust = atSide.y;
      const takesIn = atSide.x - atCentre.x;
      for (let share = 0.05; share < 1; share += 0.05) {
        const through = point(0, bust + share * (underBust - bust));
        const [side, centre] = ['side front', 'centre front'].map(
          (panel) =>
            edgeCrossings(edgeOf(evaluation, panel, 'princess upper'), { through, heading: heading(0) })[0]
              ?.point.x ?? Number.NaN,
        ) as [number, number];
        const wider = share * takesIn - (side - centre);
        within(-6, 0.15 * takesIn)(wider, `${of}, ${share}`);
      }
    }
  });
});

describe('the waist', () => {
  it('leaves the side seam square, front and back', () => {
    for (const { of, made: evaluation } of made)
      for (const panel of ['side front', 'side back']) {
        const side = endDirection(edgeOf(evaluation, panel, 'side'));
        const waist = startDirection(edgeOf(evaluation, panel, 'waist'));
        expect(Math.abs(side.x * waist.x + side.y * waist.y), `${panel}: ${of}`).toBeLessThan(1e-6);
      }
  });

  it('dips at centre front by no more than 6 mm where it is smaller than the ribs, 15 elsewhere (13 mm)', () => {
    everyFigure(/^waist at centre front below/, 2, (value, of, { body: { size } }) => {
      const most = size.waistGirth < size.underBustGirth ? 6 : 15;
      within(-most, most)(value, of);
    });
  });
});

describe('a notch', () => {
  it('is cut 4 mm deep at most (12.7 mm)', () => {
    everyFigure(/^deepest notch$/, 1, within(0, 4 + 1e-9));
  });

  it('is never cut over half its allowance (all of it)', () => {
    everyFigure(/^deepest notch, of its allowance$/, 1, within(0, 1 / 2 + 1e-9));
  });

  it('is cut no deeper where every allowance is as narrow as can be chosen', () => {
    const narrow = drafted('dress', shippedBody('leading-lady'), {
      seamAllowance: 6,
      sideAllowance: 6,
      centreBackAllowance: 6,
      armholeAllowance: 6,
      necklineAllowance: 5,
    });
    for (const { value } of shapesNamed(narrow, /^deepest notch, of its allowance$/))
      within(0, 1 / 2 + 1e-9)(value, 'narrow');
  });
});

describe('a bound of shape', () => {
  it('is kept by everything here, and every figure outside another band is said with its reason', () => {
    for (const { of, made: evaluation } of made)
      for (const { name, ok, bound, outside } of evaluation.report.shapes) {
        if (bound) expect(ok, `${name}: ${of}`).toBe(true);
        if (!ok) expect(outside, `${name}: ${of}`).not.toBe('');
      }
  });

  // The leading lady is the regular adult that the bands are for: bust 92, waist 74, hip 99, back neck to waist 40.5, 167 cm.
  it.each(styleNames)('is never put down to the body of the regular adult: %s', (name) => {
    const [garment, styling]: Styled = family[name];
    const made = drafted(garment, shippedBody('leading-lady'), styling);
    const hers = made.report.shapes.filter(({ ok, outside }) => !ok && outside === thisBody);
    expect(hers.map((shape) => shape.name)).toEqual([]);
  });
});
