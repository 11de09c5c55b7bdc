import type { Transform } from '../geometry/transform.ts';

/** The matrix of an SVG transform: x' = a x + c y + e, y' = b x + d y + f. */
export interface Matrix {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
}

export const unmoved: Matrix = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };

/** The matrix that does `inner` first and then `outer`. */
export const product = (outer: Matrix, inner: Matrix): Matrix => ({
  a: outer.a * inner.a + outer.c * inner.b,
  b: outer.b * inner.a + outer.d * inner.b,
  c: outer.a * inner.c + outer.c * inner.d,
  d: outer.b * inner.c + outer.d * inner.d,
  e: outer.a * inner.e + outer.c * inner.f + outer.e,
  f: outer.b * inner.e + outer.d * inner.f + outer.f,
});

/** A matrix as a transform of points; cubics follow it exactly. */
export const byMatrix =
  ({ a, b, c, d, e, f }: Matrix): Transform =>
  ({ x, y }) => ({ x: a * x + c * y + e, y: b * x + d * y + f });

const step = /\s*,?\s*([A-Za-z]+)\s*\(([^()]*)\)/y;

/** Reads a `transform` attribute (CSS Transforms 1, section 8); nothing when it is none. */
export function readTransform(text: string): Matrix | undefined {
  let matrix = unmoved;
  let at = 0;
  const whole = text.trim();
  if (whole === '' || whole === 'none') return unmoved;
  while (at < whole.length) {
    step.lastIndex = at;
    const found = step.exec(whole);
    if (!found) return undefined;
    at += found[0].length;
    const words = (found[2] ?? '').trim().split(/[\s,]+/);
    const numbers = words.map((word) => Number(word.replace(/(?:px|deg)$/, '')));
    const one = words[0] === '' ? undefined : oneStep(found[1] ?? '', numbers);
    if (!one || !Object.values(one).every((value) => Math.abs(value) < 1e9)) return undefined;
    matrix = product(matrix, one);
  }
  return matrix;
}

function oneStep(name: string, numbers: readonly number[]): Matrix | undefined {
  const [first = Number.NaN, second, third] = numbers;
  const count = numbers.length;
  const turn = (first * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  if (name === 'matrix' && count === 6) {
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = numbers;
    return { a, b, c, d, e, f };
  }
  if (name === 'translate' && count <= 2) return { ...unmoved, e: first, f: second ?? 0 };
  if (name === 'scale' && count <= 2) return { ...unmoved, a: first, d: second ?? first };
  if (name === 'skewX' && count === 1) return { ...unmoved, c: Math.tan(turn) };
  if (name === 'skewY' && count === 1) return { ...unmoved, b: Math.tan(turn) };
  if (name !== 'rotate' || (count !== 1 && count !== 3)) return undefined;
  const [x, y] = [second ?? 0, third ?? 0];
  return { a: cos, b: sin, c: -sin, d: cos, e: x - cos * x + sin * y, f: y - sin * x - cos * y };
}
