import { describe, expect, it } from 'vitest';
import { asOneLine, cornerJoin } from '../../../engine/geometry/corner-join.ts';
import { cubic, line } from './generators.ts';

describe('two lines', () => {
  it('are one where the second runs straight on', () => {
    expect(asOneLine(line(0, 0, 10, 0), line(10, 0, 25, 0))).toEqual(line(0, 0, 25, 0));
  });

  it('are one where the shorter strays from straight by less than rounding, however it turns', () => {
    // The corner strays by the sine of the turn times the length of the shorter: 1e-7 of a thousandth of a millimetre.
    const sliver = line(100, 0, 100.001, 1e-10);
    expect(asOneLine(line(0, 0, 100, 0), sliver)).toEqual(line(0, 0, 100.001, 1e-10));
    expect(asOneLine(line(-0.001, 1e-10, 0, 0), line(0, 0, 100, 0))).toEqual(line(-0.001, 1e-10, 100, 0));
  });

  it('are two where a long one strays farther, though it turns by less', () => {
    expect(asOneLine(line(0, 0, 100, 0), line(100, 0, 200, 1e-8))).toBeUndefined();
    expect(asOneLine(line(0, 0, 100, 0), line(100, 0, 200, -1e-8))).toBeUndefined();
  });

  it('are two where the second turns back, or one of them is a curve', () => {
    expect(asOneLine(line(0, 0, 10, 0), line(10, 0, 5, 0))).toBeUndefined();
    expect(asOneLine(line(0, 0, 10, 0), line(10, 0, 10, 5))).toBeUndefined();
    expect(asOneLine(line(0, 0, 10, 0), cubic(10, 0, 11, 0, 12, 0, 13, 0))).toBeUndefined();
    expect(asOneLine(cubic(10, 0, 11, 0, 12, 0, 13, 0), line(13, 0, 20, 0))).toBeUndefined();
  });
});

describe('the join between two parallels', () => {
  const [right, down] = [line(0, 0, 50, 0), line(50, 0, 50, 50)];

  it('is a gap outside the corner, and a crossing within it', () => {
    expect(cornerJoin(right, down, 10, 0.01, 'mitre')).toEqual({
      kind: 'filled',
      curves: [line(50, -10, 60, -10), line(60, -10, 60, 0)],
      deviation: 0,
    });
    expect(cornerJoin(right, down, -10, 0.01, 'mitre').kind).toBe('crossing');
    expect(cornerJoin(line(50, 50, 50, 0), line(50, 0, 0, 0), 10, 0.01, 'mitre').kind).toBe('crossing');
    expect(cornerJoin(right, line(50, 0, 80, 0), 10, 0.01, 'mitre').kind).toBe('smooth');
  });

  it('is a mitre up to four times the distance, and round beyond', () => {
    // The tip lies at d / cos(half the turn): at a turn of 151 degrees 3.994 d, at 151.1 degrees 4.010 d.
    const turned = (degrees: number) => {
      const angle = (degrees * Math.PI) / 180;
      const on = line(50, 0, 50 + 50 * Math.cos(angle), 50 * Math.sin(angle));
      const join = cornerJoin(right, on, 10, 0.01, 'mitre');
      return join.kind === 'filled' ? join.curves[0]?.kind : join.kind;
    };
    expect(turned(150.9)).toBe('line');
    expect(turned(151.1)).toBe('cubic');
  });
});
