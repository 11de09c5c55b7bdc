import { describe, expect, it } from 'vitest';
import { point } from '../../../../engine/geometry/point.ts';
import type { ShapeMeasure } from '../../../../engine/pattern/shape.ts';
import { edge, line, notch, piece } from '../../garments.ts';
import { along, arcFrom, figure, under } from './measuring.ts';

/** A panel `top` wide at its bust level, `middle` at its under-bust level and `waist` at its foot, 200 mm below. */
const panel = (name: string, top: number, middle: number, waist: number) =>
  piece(
    name,
    [
      edge('top', [line(point(0, 0), point(top, 0))]),
      edge('side', [line(point(top, 0), point(middle, 80)), line(point(middle, 80), point(waist, 200))]),
      edge('waist', [line(point(waist, 200), point(0, 200))]),
      edge('centre', [line(point(0, 200), point(0, 0))], { turn: 'fold', allowance: 0 }),
    ],
    {
      notches: [notch('under-bust', 'centre', 120, 'level'), notch('bust', 'centre', 200, 'level')],
      lines: [
        { name: 'under-bust', kind: 'level', curves: [line(point(20, 80), point(30, 80))], fullness: 12 },
      ],
    },
  );

describe('lengths added up', () => {
  const balance: ShapeMeasure = {
    kind: 'length',
    parts: [
      { kind: 'edge', piece: 'front', edge: 'waist', times: 1 },
      { kind: 'edge', piece: 'back', edge: 'waist', times: -1 },
    ],
  };

  it('give how much larger the front is than the back', () => {
    expect(figure(balance, panel('front', 240, 220, 200), panel('back', 230, 210, 185))).toBeCloseTo(15, 9);
  });

  it('take level lines as they are measured again, less what is gathered away, and what the draft adds', () => {
    const level: ShapeMeasure = {
      kind: 'length',
      parts: [{ kind: 'line', piece: 'front', line: 'under-bust', times: 2 }],
      plus: -400,
    };
    expect(figure(level, panel('front', 240, 220, 200))).toBeCloseTo(2 * (220 - 12) - 400, 9);
  });

  it('take chains up to a notch', () => {
    const strap = under('strap', [line(point(0, 0), point(213, 0))], [notch('shoulder', 'line', 90)]);
    const toShoulder: ShapeMeasure = {
      kind: 'length',
      parts: [{ kind: 'chain', chain: { edges: [along('strap', 'line')], to: 'shoulder' }, times: 1 }],
    };
    expect(figure(toShoulder, strap)).toBeCloseTo(90, 9);
  });

  it('are nothing where a part is not there', () => {
    expect(figure(balance, panel('front', 240, 220, 200))).toBeUndefined();
  });
});

describe('the hollow of a taper', () => {
  const taper = (down: string): ShapeMeasure => ({
    kind: 'taper',
    upper: [{ kind: 'edge', piece: 'back', edge: 'top', times: 1 }],
    middle: [{ kind: 'line', piece: 'back', line: 'under-bust', times: 1 }],
    lower: [{ kind: 'edge', piece: 'back', edge: 'waist', times: 1 }],
    down: { piece: 'back', edge: down, reversed: true },
    notches: ['bust', 'under-bust'],
  });
  const withoutGathers = (top: number, middle: number, waist: number) => {
    const drawn = panel('back', top, middle, waist);
    return { ...drawn, lines: drawn.lines.map(({ fullness: _, ...level }) => level) };
  };

  it('is nothing in a panel that tapers evenly, 80 of 200 mm down (closed form)', () => {
    expect(figure(taper('centre'), withoutGathers(250, 250 - 0.4 * 40, 210))).toBeCloseTo(0, 6);
  });

  it('is how much narrower the panel is in between, less than nothing where it is wider', () => {
    expect(figure(taper('centre'), withoutGathers(250, 217, 210))).toBeCloseTo(17, 6);
    expect(figure(taper('centre'), withoutGathers(250, 240, 210))).toBeCloseTo(-6, 6);
  });

  it('cannot be found without both notches', () => {
    expect(figure(taper('side'), withoutGathers(250, 217, 210))).toBeUndefined();
  });
});

describe('the deepest notch', () => {
  const depth = (say: 'mm' | 'share'): ShapeMeasure => ({ kind: 'notch depth', say });
  const notched = under('front', arcFrom(point(0, 0), 90, 0.7), [notch('front', 'line', 20)]);

  it('is what a file says of it, where the piece was read from one', () => {
    const read = { ...notched, notches: [{ ...notch('front', 'line', 20), depth: 3 }] };
    expect(figure(depth('mm'), read)).toBe(3);
    expect(figure(depth('share'), read)).toBeCloseTo(0.3, 12);
  });

  it('is nothing without notches, or where there is no allowance to cut into', () => {
    expect(figure(depth('mm'), under('front', arcFrom(point(0, 0), 90, 0.7)))).toBe(0);
    const bare = { ...notched, edges: notched.edges.map((each) => ({ ...each, allowance: 0 })) };
    expect(figure(depth('mm'), bare)).toBe(0);
  });
});
