import type { Formula } from './formula.ts';
import type { SentenceParts } from './tokens.ts';

/**
 * A formula written out for another program: the names are gone, `of` is `x`, brackets stand only where they are needed,
 * with blanks around, and each value put in is a place to fill.
 */
export function formulaText(formula: Formula): SentenceParts {
  const parts: (string | number)[] = [];
  for (const part of written(formula, 0)) {
    const last = parts.at(-1);
    if (typeof part === 'string' && typeof last === 'string') parts[parts.length - 1] = last + part;
    else parts.push(part);
  }
  return parts;
}

/** How tightly each kind holds together: a part that holds less tightly than its place asks for gets brackets. */
const tightness: Readonly<Record<Formula['kind'], number>> = {
  bound: 0,
  sum: 1,
  product: 2,
  negative: 2,
  function: 3,
  number: 4,
  given: 4,
};

function written(formula: Formula, place: number): SentenceParts {
  const parts = inside(formula);
  return tightness[formula.kind] < place ? ['( ', ...parts, ' )'] : parts;
}

function inside(formula: Formula): SentenceParts {
  switch (formula.kind) {
    case 'number':
      return [`${formula.value}${formula.degrees ? '°' : ''}`];
    case 'given':
      return [formula.given];
    case 'negative':
      return ['-1 x ', ...written(formula.of, 3)];
    case 'function':
      return [`${formula.name} `, ...written(formula.of, 3)];
    case 'bound':
      return [...written(formula.of, 0), `, ${formula.op} `, ...written(formula.bound, 1)];
    case 'sum':
      return [...written(formula.left, 1), ` ${formula.op} `, ...written(formula.right, 2)];
    case 'product':
      return [...written(formula.left, 2), ` ${formula.op} `, ...written(formula.right, 3)];
  }
}
