import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Mm, type Quantity, quantity } from '../../../../engine/pattern/quantity.ts';
import type { Rule } from '../../../../engine/pattern/rule.ts';
import { laid, rules } from '../table.ts';
import { workOut } from './written-formula.ts';

const table = laid();
const { mm, angle, ratio, size, choice } = table;
const scye = size.scyeDepth;
const slope = size.shoulderSlope;

const length = (value: number): Mm => quantity(value, 'mm', 'a length', { kind: 'choice' });
const plain = (value: number) => quantity(value, 'ratio', 'a number', { kind: 'choice' });

describe('a sentence computes', () => {
  it('a length from a measurement and a rule, words standing before the values', () => {
    expect(mm`Underarm: scye depth ${scye} + ${rules.drop}`.value).toBe(scye.value + 15);
  });

  it('products before sums, and each from the left', () => {
    expect(ratio`A: 2 + 3 x 4`.value).toBe(14);
    expect(ratio`B: 20 - 3 - 4`.value).toBe(13);
    expect(ratio`C: 20 / 2 / 5`.value).toBe(2);
    expect(ratio`D: (2 + 3) x 4`.value).toBe(20);
    expect(ratio`E: 2 x -3 - -1`.value).toBe(-5);
  });

  it('a share of a length', () => {
    expect(mm`A: ${choice.share} of scye depth ${scye} / 2`.value).toBeCloseTo((0.64 * scye.value) / 2, 12);
    expect(mm`B: (1 - ${choice.share}) of (${scye} - ${rules.drop})`.value).toBeCloseTo(
      0.36 * (scye.value - 15),
      12,
    );
  });

  it('bounds in the order they stand, inside brackets too', () => {
    expect(mm`A: scye depth ${scye} + ${rules.drop}, at most ${choice.ease}`.value).toBe(60);
    expect(mm`B: ${choice.ease}, at least ${scye}, but at most ${rules.drop} - ${rules.above}`.value).toBe(7);
    expect(ratio`C: 2 x (5, at most 3) + (1, at least 0)`.value).toBe(7);
    expect(mm`D: ${rules.drop} - ${scye}, and at least 0`.value).toBe(0);
  });

  it('roots and squares, and the trade’s few functions of angles', () => {
    expect(mm`A: root of (square of ${scye} - square of ${choice.ease})`.value).toBeCloseTo(
      Math.sqrt(scye.value ** 2 - 3600),
      10,
    );
    expect(mm`B: sine of slope ${slope} x ${scye}`.value).toBeCloseTo(Math.sin(slope.value) * scye.value, 10);
    expect(angle`C: 2 x arc sine of (${rules.drop} / (2 x ${choice.ease}), at most 1)`.value).toBeCloseTo(
      2 * Math.asin(15 / 120),
      12,
    );
    expect(ratio`D: cosine of 60° + tangent of 45°`.value).toBeCloseTo(1.5, 12);
    expect(angle`E: arc cosine of 0 - arc tangent of 1`.value).toBeCloseTo(Math.PI / 4, 12);
    expect(angle`F: angle of arc (flare ${rules.drop} / ${choice.ease})`.value).toBe(0.25);
    expect(mm`G: ${rules.drop} x whole part of (${choice.ease} / ${rules.drop} + 0.9)`.value).toBe(60);
    expect(mm`H: arc of angle ${slope} x ${scye}`.value).toBeCloseTo(slope.value * scye.value, 10);
  });

  it('angles that were written in degrees', () => {
    expect(angle`A: shoulder slope ${slope} - ${rules.tilt}`.value).toBeCloseTo(
      slope.value - (2 * Math.PI) / 180,
      12,
    );
    expect(angle`B: ${choice.lean} + 90°`.value).toBeCloseTo((94 * Math.PI) / 180, 12);
  });

  it('with numbers that count so much for each mm', () => {
    expect(ratio`Fullness: ${rules.third} + ${rules.perMm} x ${scye}`.value).toBeCloseTo(
      0.33 + 0.006 * scye.value,
      12,
    );
  });

  it('anew each time, though it is read once', () => {
    const half = (of: Mm): number => mm`Half: ${of} / 2`.value;
    expect([half(length(10)), half(length(30))]).toEqual([5, 15]);
  });

  it('for other units where one template is met with others', () => {
    const half = (of: Quantity): number => ratio`Half: ${of} / ${of} / 2`.value;
    expect([half(length(10)), half(plain(3)), half(length(4))]).toEqual([0.5, 0.5, 0.5]);
  });
});

/** What may stand in a sentence, each written in a template of its own and computed beside it. */
const numbers = fc.double({ min: 0.5, max: 900, noNaN: true });

describe('what a sentence comes to', () => {
  it('is direct arithmetic, and its written formula says the same to another program', () => {
    fc.assert(
      fc.property(numbers, numbers, numbers, numbers, (a, b, c, d) => {
        const own = laid();
        const [x, y, z, w] = [length(a), length(b), length(c), plain(d)];
        const results = [
          [own.mm`A: first ${x} + ${y} - ${z}`, a + b - c],
          [own.mm`B: ${w} of (${x} - ${y}) / 3 - -${z}`, (d * (a - b)) / 3 + c],
          [
            own.mm`C: ${x} - (${y} - ${z}), at least ${y}, at most ${x} + ${z}`,
            Math.min(Math.max(a - (b - c), b), a + c),
          ],
          [own.mm`D: root of (${x} x ${y} + square of ${z})`, Math.sqrt(a * b + c * c)],
          [own.ratio`E: ${x} / (${y} / ${z}) / (${w} x ${x})`, a / (b / c) / (d * a)],
          [own.mm`F: -(${x} + ${y}) x -2 / ${w}`, (2 * (a + b)) / d],
        ] as const;
        const steps = own.steps();
        for (const [i, [found, direct]] of results.entries()) {
          expect(Math.abs(found.value - direct)).toBeLessThan(1e-12 * Math.max(1000, Math.abs(direct)));
          expect(Math.abs(workOut(steps[i]?.formula ?? '') - direct)).toBeLessThan(1e-6);
        }
      }),
    );
  });

  it('is direct arithmetic for angles', () => {
    fc.assert(
      fc.property(numbers, fc.double({ min: 1, max: 89, noNaN: true }), (a, degrees) => {
        const own = laid();
        const x = length(a);
        const turn = quantity(degrees, 'degrees', 'a turn', { kind: 'choice' });
        const radians = (degrees * Math.PI) / 180;
        const results = [
          [own.angle`A: ${turn} / 2 + 3°`, radians / 2 + Math.PI / 60],
          [own.angle`B: arc sine of (sine of ${turn} / 2)`, Math.asin(Math.sin(radians) / 2)],
          [
            own.angle`C: arc tangent of (${x} / (cosine of ${turn} x ${x}))`,
            Math.atan(1 / Math.cos(radians)),
          ],
          [own.angle`D: angle of arc (${x} / (2 x ${x}))`, 0.5],
        ] as const;
        const steps = own.steps();
        for (const [i, [found, direct]] of results.entries()) {
          expect(found.value).toBeCloseTo(direct, 10);
          expect(workOut(steps[i]?.formula ?? '')).toBeCloseTo((direct * 180) / Math.PI, 6);
        }
      }),
    );
  });
});

describe('the written formula', () => {
  it('has no exponents, and its numbers carry their sign', () => {
    const own = laid();
    own.ratio`Tiny: ${plain(3e-9)} - ${plain(-2)}`;
    const [step] = own.steps();
    expect(step?.formula).toBe('0.000000003000 - -2');
    expect(workOut(step?.formula ?? '')).toBeCloseTo(2, 8);
  });

  it('keeps the brackets that matter and no other', () => {
    const own = laid();
    own.mm`A: ((scye depth ${scye}) - (${rules.drop} + (${rules.above})), at least 0), at most (${scye})`;
    own.ratio`B: 2 x (3 / (4 x 5)) - (6 - 7) + square of (8 + 9) x root of 4`;
    expect(own.steps().map(({ formula }) => formula)).toEqual([
      '187 - ( 15 + 8 ), at least 0, at most 187',
      '2 x ( 3 / ( 4 x 5 ) ) - ( 6 - 7 ) + square of ( 8 + 9 ) x root of 4',
    ]);
  });
});

describe('a sentence that cannot compute', () => {
  const missing = (write: () => unknown): string => {
    try {
      write();
    } catch (error) {
      return error instanceof Error ? error.message : '';
    }
    return 'no error';
  };

  it.each<readonly [string, () => unknown, string]>([
    ['a title is missing', () => mm`scye depth ${scye}`, 'begins with its title'],
    ['words name no value', () => mm`A: scye ${scye} + wasit`, '◦ + >>> wasit'],
    ['a function is not known', () => mm`A: squareroot of (${scye} x ${scye})`, '>>> of (◦'],
    ['a typed number follows words', () => ratio`A: about 3`, '>>> about 3'],
    ['words would say a computation', () => mm`A: twice scye depth ${scye}`, '>>> twice scye'],
    ['a value is missing', () => mm`A: ${scye} + `, 'a value is missing'],
    ['two values stand side by side', () => mm`A: ${scye} ${rules.drop}`, '◦ >>> ◦'],
    ['words follow a value', () => mm`A: ${scye} as chosen`, '◦ >>> as chosen'],
    ['a bracket stays open', () => mm`A: 2 x (${scye} + ${rules.drop}`, 'not closed'],
    ['a bracket is closed twice', () => mm`A: (${scye}) )`, '>>> )'],
    ['a comma is followed by free words', () => mm`A: ${scye}, roughly`, 'free words stand after a ";"'],
    ['a character has no meaning', () => mm`A: ${scye} * 2`, '◦ >>> * 2'],
    ['a word put in is no name', () => mm`A: ${scye} + ${'more'}`, 'These words name no value'],
  ])('says where %s', (_, write, place) => {
    expect(missing(write)).toContain(place);
  });

  it.each<readonly [string, () => unknown, string]>([
    ['a length and a plain number are added', () => mm`A: ${scye} + 5`, 'a length (mm) and a plain number'],
    [
      'a length is compared with an angle',
      () => mm`A: ${scye}, at most ${slope}`,
      'a length (mm) and an angle',
    ],
    ['a product of lengths is no length', () => mm`A: ${scye} x ${rules.drop}`, 'comes to mm to the power 2'],
    ['a length is no angle', () => angle`A: ${scye}`, 'should be an angle'],
    ['a ratio is no length', () => mm`A: ${scye} / ${rules.drop}`, 'should be a length (mm)'],
    ['there is no sine of a length', () => ratio`A: sine of ${scye}`, '"sine of" is asked of a length (mm)'],
    [
      'there is no arc of an angle over nothing',
      () => angle`A: arc sine of ${slope}`,
      'takes a plain number',
    ],
    ['a root does not come out even', () => mm`A: root of ${scye}`, 'no root of a length (mm)'],
    ['so much for each mm stands alone', () => ratio`A: 1 + ${rules.perMm}`, 'mm to the power -1'],
  ])('says so where %s', (_, write, words) => {
    expect(missing(write)).toContain(words);
  });

  it('lets nothing stand for nothing of everything', () => {
    expect(mm`A: ${rules.above} - ${rules.drop}, at least 0`.value).toBe(0);
    expect(angle`B: ${slope}, at most 0`.value).toBe(0);
  });

  it('is no step', () => {
    const own = laid();
    missing(() => own.mm`A: ${own.size.scyeDepth} + 5`);
    expect(own.steps()).toEqual([]);
  });

  it('names a rule’s unit, not its written form', () => {
    const rule: Rule = rules.tilt;
    expect(missing(() => mm`A: ${scye} + ${rule}`)).toContain('a length (mm) and an angle');
  });
});
