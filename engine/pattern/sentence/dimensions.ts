import type { QuantityUnit } from '../quantity.ts';
import type { Formula, FunctionName } from './formula.ts';

/** What a value counts: powers of mm and of angle. `any` is the number nothing, which is nothing of everything. */
type Dimension = { readonly mm: number; readonly angle: number } | 'any';

const none: Dimension = { mm: 0, angle: 0 };
const angle: Dimension = { mm: 0, angle: 1 };

const dimensionOf: Readonly<Record<QuantityUnit, Dimension>> = {
  mm: { mm: 1, angle: 0 },
  rad: angle,
  ratio: none,
  'per mm': { mm: -1, angle: 0 },
};

/** What each function takes, and what it gives; the root and the square halve and double. */
const takes: Readonly<
  Record<Exclude<FunctionName, 'root of' | 'square of'>, readonly [Dimension, Dimension]>
> = {
  'sine of': [angle, none],
  'cosine of': [angle, none],
  'tangent of': [angle, none],
  'arc sine of': [none, angle],
  'arc cosine of': [none, angle],
  'arc tangent of': [none, angle],
  'whole part of': [none, none],
  'angle of arc': [none, angle],
  'arc of angle': [angle, none],
};

/**
 * Checks that a formula adds like to like, asks no sine of a length, and comes to the unit its sentence promises, the
 * values put in counting what `units` say. The first that is wrong is given to `refuse`, with its place.
 */
export function checkUnits(
  formula: Formula,
  units: readonly (QuantityUnit | undefined)[],
  promised: QuantityUnit,
  refuse: (at: number, why: string) => never,
): void {
  const like = (a: Dimension, b: Dimension, at: number): Dimension => {
    if (a === 'any') return b;
    if (b === 'any' || same(a, b)) return a;
    return refuse(at, `This joins ${words(a)} and ${words(b)}`);
  };
  const of = (f: Formula): Dimension => {
    switch (f.kind) {
      case 'number':
        if (f.degrees) return angle;
        return f.value === 0 ? 'any' : none;
      case 'given':
        return dimensionOf[units[f.given] ?? 'ratio'];
      case 'negative':
        return of(f.of);
      case 'sum':
        return like(of(f.left), of(f.right), f.at);
      case 'bound':
        return like(of(f.of), of(f.bound), f.at);
      case 'product':
        return product(of(f.left), of(f.right), f.op === '/' ? -1 : 1);
      case 'function':
        return applied(f.name, of(f.of), f.at);
    }
  };
  const applied = (name: FunctionName, dimension: Dimension, at: number): Dimension => {
    if (name === 'square of') return product(dimension, dimension, 1);
    if (name === 'root of') {
      if (dimension === 'any') return 'any';
      const half = { mm: dimension.mm / 2, angle: dimension.angle / 2 };
      if (Number.isInteger(half.mm) && Number.isInteger(half.angle)) return half;
      return refuse(at, `There is no root of ${words(dimension)}`);
    }
    const [wanted, gives] = takes[name];
    if (dimension === 'any' || same(dimension, wanted)) return gives;
    return refuse(at, `"${name}" is asked of ${words(dimension)}, but takes ${words(wanted)}`);
  };
  const found = of(formula);
  const wanted = dimensionOf[promised];
  if (found !== 'any' && !same(found, wanted))
    refuse(formula.at, `This comes to ${words(found)}, but should be ${words(wanted)}`);
}

const product = (a: Dimension, b: Dimension, times: 1 | -1): Dimension =>
  a === 'any' || b === 'any' ? 'any' : { mm: a.mm + times * b.mm, angle: a.angle + times * b.angle };

const same = (a: Dimension, b: Dimension): boolean =>
  a === b || (a !== 'any' && b !== 'any' && a.mm === b.mm && a.angle === b.angle);

function words(dimension: Dimension): string {
  if (dimension === 'any' || same(dimension, none)) return 'a plain number';
  const { mm, angle } = dimension;
  const counted = [power('mm', mm), power('angle', angle)].filter((part) => part !== '').join(' x ');
  return mm === 1 && angle === 0 ? 'a length (mm)' : mm === 0 && angle === 1 ? 'an angle' : counted;
}

const power = (name: string, times: number): string =>
  times === 0 ? '' : times === 1 ? name : `${name} to the power ${times}`;
