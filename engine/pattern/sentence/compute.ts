import type { Given } from '../quantity.ts';
import { type Formula, functions } from './formula.ts';

/** A formula ready to be worked out from what is put in, in its order (mm, radians). */
export type Computation = (given: readonly Given[]) => number;

/** Makes a formula into a function, once, so that a sentence costs little more than its arithmetic. */
export function computation(formula: Formula): Computation {
  switch (formula.kind) {
    case 'number': {
      const value = formula.degrees ? (formula.value * Math.PI) / 180 : formula.value;
      return () => value;
    }
    case 'given': {
      const place = formula.given;
      return (given) => {
        const put = given[place];
        return typeof put === 'object' ? put.value : Number.NaN;
      };
    }
    case 'negative': {
      const of = computation(formula.of);
      return (given) => -of(given);
    }
    case 'function': {
      const apply = functions[formula.name];
      const of = computation(formula.of);
      return (given) => apply(of(given));
    }
    case 'bound': {
      const [of, bound] = [computation(formula.of), computation(formula.bound)];
      return formula.op === 'at least'
        ? (given) => Math.max(of(given), bound(given))
        : (given) => Math.min(of(given), bound(given));
    }
    case 'sum':
    case 'product':
      return joined(formula.op, computation(formula.left), computation(formula.right));
  }
}

function joined(op: '+' | '-' | 'x' | '/', left: Computation, right: Computation): Computation {
  if (op === '+') return (given) => left(given) + right(given);
  if (op === '-') return (given) => left(given) - right(given);
  if (op === 'x') return (given) => left(given) * right(given);
  return (given) => left(given) / right(given);
}
