import { describe, expect, expectTypeOf, it } from 'vitest';
import type { Curve } from '../../../engine/geometry/curve.ts';
import { type Point, point } from '../../../engine/geometry/point.ts';
import type { Step } from '../../../engine/pattern/garment.ts';
import type { Angle, Mm, Ratio } from '../../../engine/pattern/quantity.ts';
import { stepText } from '../../../engine/pattern/step-text.ts';
import type { Unit } from '../../../engine/text/units.ts';
import { laid, rules } from './table.ts';

const line = (from: Point, to: Point): Curve => ({ kind: 'line', from, to });

const texts = (steps: readonly Step[], units: Unit): readonly string[] =>
  steps.map((step) => stepText(step, units));

describe('the drafting table', () => {
  it('has every measurement and every number chosen as a quantity of its own unit', () => {
    const { size, choice, body } = laid();
    expect(size.scyeDepth).toEqual({
      value: body.size.scyeDepth,
      unit: 'mm',
      name: 'scye depth',
      origin: { kind: 'measurement', measurement: 'scyeDepth' },
    });
    expect(size.shoulderSlope.unit).toBe('rad');
    expect(choice.lean.value).toBeCloseTo((4 * Math.PI) / 180, 12);
    expect(choice.drop).toBe('auto');
    expectTypeOf(size.scyeDepth).toEqualTypeOf<Mm>();
    expectTypeOf(size.shoulderSlope).toEqualTypeOf<Angle>();
    expectTypeOf(choice.share).toEqualTypeOf<Ratio>();
    expectTypeOf(choice.drop).toEqualTypeOf<Mm | 'auto'>();
    expectTypeOf(choice).not.toHaveProperty('neckline');
  });

  it('writes each sentence as a step: its words with the figures, what it comes to, and for a program the formula', () => {
    const { mm, size, steps } = laid();
    const underarm = mm`Underarm level: scye depth ${size.scyeDepth} + ${rules.drop}, at most ${size.backNeckPointToWaist} - ${rules.above}; never lower`;
    expect(underarm).toEqual({
      value: 202,
      unit: 'mm',
      name: 'Underarm level',
      origin: { kind: 'step', number: 1 },
    });
    expect(steps()).toEqual([
      {
        number: 1,
        title: 'Underarm level',
        says: ['scye depth ', 0, ' + ', 1, ', at most ', 2, ' - ', 3, '; ', 'never lower'],
        formula: '187 + 15, at most 405 - 8',
        value: 202,
        unit: 'mm',
        source: 'Z1, Z2, common practice, no source',
        from: [size.scyeDepth, rules.drop.quantity, size.backNeckPointToWaist, rules.above.quantity],
      },
    ]);
    expect(texts(steps(), 'mm')).toEqual(['scye depth 187 + 15, at most 405 - 8 = 202 mm; never lower']);
    expect(texts(steps(), 'cm')).toEqual([
      'scye depth 18.7 + 1.5, at most 40.5 - 0.8 = 20.2 cm; never lower',
    ]);
    // 187, 15, 405, 8 and 202 mm are 7.362, 0.591, 15.945, 0.315 and 7.953 in.
    expect(texts(steps(), 'in')).toEqual([
      'scye depth 7 3/8 + 9/16, at most 15 15/16 - 5/16 = 7 15/16 in; never lower',
    ]);
  });

  it('writes an angle in degrees, a rule as it stands, and a lone value without an equals sign', () => {
    const { angle, ratio, mm, size, choice, steps } = laid();
    angle`Slope: shoulder slope ${size.shoulderSlope} - ${rules.tilt}`;
    ratio`Full: ${rules.perMm} x ${size.scyeDepth} / 3`;
    mm`Waist: back neck point to waist ${size.backNeckPointToWaist}`;
    angle`Lean: ${choice.lean}; as chosen`;
    mm`Third: ${rules.third} of ${size.scyeDepth} / 7`;
    expect(texts(steps(), 'mm')).toEqual([
      'shoulder slope 20° - 2° = 18°',
      '0.006 x 187 / 3 = 0.374',
      'back neck point to waist 405 mm',
      '4°; as chosen',
      '0.33 of 187 / 7 = 8.8 mm',
    ]);
    expect(texts(steps(), 'in')).toEqual([
      'shoulder slope 20° - 2° = 18°',
      '0.1524 x 7 3/8 / 3 = 0.374',
      'back neck point to waist 15 15/16 in',
      '4°; as chosen',
      '0.33 of 7 3/8 / 7 = 3/8 in',
    ]);
    expect(steps().map(({ formula }) => formula)).toEqual([
      '20° - 2°',
      '0.006 x 187 / 3',
      '405',
      '4°',
      '0.33 x 187 / 7',
    ]);
  });

  it('takes words into title and name', () => {
    const { mm, size, steps } = laid();
    const girth = mm`Girth at the ${'waist'}, ${'finished'}: ${size.waistGirth.name} ${size.waistGirth} / 2`;
    expect(girth.name).toBe('Girth at the waist, finished');
    expect(texts(steps(), 'mm')).toEqual(['waist girth 740 / 2 = 370 mm']);
    expect(steps()[0]?.says.join('')).toBe('waist girth 0 / 2');
  });

  it('says a step without a number', () => {
    const { say, mm, size, steps } = laid();
    const waist = mm`Waist: ${size.waistGirth} / 2`;
    say`Waist line: as far as ${waist} mm, square to the fold; then the curve [slash and spread]`;
    expect(steps()[1]).toEqual({
      number: 2,
      title: 'Waist line',
      says: ['as far as ', 0, ' mm, square to the fold', '; ', 'then the curve'],
      source: 'slash and spread',
      from: [waist],
    });
    expect(texts(steps(), 'mm')[1]).toBe('as far as 370 mm, square to the fold; then the curve');
    expect(texts(steps(), 'in')[1]).toBe('as far as 14 9/16 in, square to the fold; then the curve');
  });

  it('takes the source of a step from what is in it', () => {
    const { mm, angle, size, choice, fitted, steps } = laid([{ 'round back': 1 }]);
    const first = mm`A: ${size.waistGirth}`;
    mm`B: ${choice.ease}`;
    mm`C: ${size.waistGirth} + ${choice.ease}`;
    mm`D: ${first} / 2`;
    mm`E: ${first} + ${fitted('round back')}`;
    mm`F: ${rules.third} of ${first} + ${rules.drop} + ${rules.above}`;
    angle`G: angle of arc (${first} / ${first}) [sector of a cone]`;
    mm`H: ${first} + ${rules.drop} [a book, 1911]`;
    expect(steps().map(({ source }) => source)).toEqual([
      'measurement',
      'styling',
      'measurement and styling',
      'construction',
      'fitting',
      'Z3, from memory; Z1, Z2, common practice, no source',
      'sector of a cone',
      'Z1, common practice, no source; a book, 1911',
    ]);
  });

  it('remembers what each step came from, by way of points too', () => {
    const { mm, say, measured, point: place, size, steps } = laid();
    const waist = mm`Waist: ${size.waistGirth} / 2`;
    const a = place('back', 'centre', point(0, 0));
    say`Side: straight down`;
    const b = place('back', 'side', point(30, 40));
    const chord = measured('Chord', 'from the centre to the side', 50, a, b, waist);
    expect(chord.value).toBe(50);
    const [, , step] = steps();
    expect(step).toMatchObject({ formula: '50', value: 50 });
    expect(texts(steps(), 'mm')[2]).toBe('from the centre to the side = 50 mm');
    expect(step?.from.map(({ name, origin }) => [name, origin])).toEqual([
      ['Waist', { kind: 'step', number: 1 }],
      ['Side', { kind: 'step', number: 2 }],
    ]);
  });

  it('keeps what a step puts on paper, lines of the sketch as they came out', () => {
    const { say, point: place, line: draw, curves, points, solved, heading, steps } = laid();
    heading('The back');
    say`Waist: straight`;
    const [a, b] = [place('back', 'centre', point(0, 0)), place('back', 'side', point(30, 40))];
    draw('back', 'waist', [line(a, b)]);
    say`Armhole: hollow`;
    curves('back', ['armhole', 'hem']);
    points('back', { foot: 'underarm' });
    solved({ curves: { armhole: line(b, a) }, points: { foot: b } });
    const [waist, armhole] = steps();
    expect(waist).toMatchObject({
      heading: 'The back',
      draws: {
        points: [
          { on: 'back', name: 'centre', at: a },
          { on: 'back', name: 'side', at: b },
        ],
        lines: [{ on: 'back', name: 'waist', curves: [line(a, b)] }],
      },
    });
    expect(armhole?.draws).toEqual({
      points: [{ on: 'back', name: 'underarm', at: b }],
      lines: [{ on: 'back', name: 'armhole', curves: [line(b, a)] }],
    });
  });

  it('says where a length lies on a drawing, and stops at one that is another length there', () => {
    const { mm, dimension, steps, size } = laid();
    const waist = mm`Waist level: ${size.backNeckPointToWaist}`;
    const foot = point(0, waist.value);
    dimension('back', waist, point(0, 0), foot);
    dimension('back', size.backNeckPointToWaist, 'centre back');
    expect(steps()[0]?.dimensions).toEqual([
      { kind: 'straight', on: 'back', of: waist, from: point(0, 0), to: foot },
      { kind: 'line', on: 'back', of: size.backNeckPointToWaist, name: 'centre back' },
    ]);
    expect(() => dimension('back', waist, point(3, 0), point(3, 12))).toThrow(
      `Waist level is ${waist.value} mm, and is shown on the back as a length of 12 mm.`,
    );
  });

  it('says in which parts a length lies, and stops at parts that are as long as another', () => {
    const { mm, line, laidOut, steps, size } = laid();
    const waist = mm`Waist level: ${size.backNeckPointToWaist}`;
    const [top, foot] = [point(0, 0), point(0, waist.value / 4)];
    line('back', 'upper', [{ kind: 'line', from: top, to: foot }]);
    const parts = [
      { on: 'back', name: 'upper' },
      { on: 'front', from: top, to: foot },
    ];
    laidOut(waist, 2, () => parts);
    laidOut(waist, 1, () => [{ on: 'back', name: 'a line that nothing draws' }]);
    expect(steps()[0]?.dimensions).toEqual([{ kind: 'parts', of: waist, times: 2, parts }]);
    laidOut(waist, 1, () => parts);
    expect(steps).toThrow(
      `Waist level is ${waist.value} mm, and is shown on the back and front as a length of ${waist.value / 2} mm.`,
    );
  });

  it('says where an angle lies on a drawing, and stops at one that is another angle there', () => {
    const { angle, angleAt, steps, size } = laid();
    const slope = angle`Slope: ${size.shoulderSlope}`;
    const [at, from, to] = [
      point(10, 20),
      point(30, 20),
      point(10 + Math.cos(slope.value), 20 + Math.sin(slope.value)),
    ];
    angleAt('back', slope, at, from, to);
    expect(steps()[0]?.dimensions).toEqual([{ kind: 'angle', on: 'back', of: slope, at, from, to }]);
    expect(() => angleAt('back', slope, at, from, point(10, 50))).toThrow(
      `Slope is ${(slope.value * 180) / Math.PI}°, and is shown on the back as an angle of 90°.`,
    );
  });

  it('gives what a fitting pinned, and nothing where it pinned nothing', () => {
    const { fitted, takenIn } = laid([
      { 'round back': 1 },
      { 'take in': 'side seam', level: 'waist', by: 0.5 },
    ]);
    expect(fitted('round back')).toEqual({
      value: 10,
      unit: 'mm',
      name: 'round back',
      origin: { kind: 'fitting' },
    });
    expect(fitted('sway back').value).toBe(0);
    expect(takenIn('side seam', 'waist').value).toBe(5);
    expect(takenIn('side seam', 'bust').value).toBe(0);
  });

  it('is plain data in the end', () => {
    const { mm, measured, size, steps } = laid();
    mm`Waist: ${size.waistGirth} / 2`;
    measured('Chord', 'across', 50);
    expect(JSON.parse(JSON.stringify(steps()))).toEqual(steps());
  });
});
