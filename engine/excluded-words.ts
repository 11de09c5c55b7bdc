import type { MeasurementName } from './body/body.ts';
import { measurementWords } from './body/measurement-words.ts';
import { boundsName } from './constraints/compile/residuals.ts';
import type { ExcludedRelation, FoundFrom } from './excluded-relation.ts';
import { degrees, significant } from './text/figure.ts';
import { listed } from './text/listed.ts';

/** So many of what a relation was found from are said; data has them all. */
const SAID = 2;

/**
 * The two sides of a conflict in words, each with whose it is: what misses most, and what misses most beside it that was
 * found from something else; of the draft's own only where there is no other. How many more take part is counted, and by
 * how much they miss is said.
 */
export function bothSides(relations: readonly ExcludedRelation[]): string {
  const [worst, ...rest] = relations;
  if (!worst) return '';
  const others = rest.filter(({ whose }) => whose !== worst.whose);
  const other = others.find(({ whose }) => whose !== 'draft') ?? others[0] ?? rest[0];
  if (!other) return `${called(worst)} cannot be had. It misses by ${missed(worst)}`;
  const more = rest.length > 1 ? `, together with ${rest.length - 1} more,` : '';
  return `${called(worst)} and ${called(other)}${more} exclude each other. They miss by ${missed(worst)}`;
}

/** How far something misses, in its own unit. */
function missed({ value, unit }: Pick<ExcludedRelation, 'value' | 'unit'>): string {
  const size = Math.abs(value);
  if (unit === 'rad') return degrees(size);
  return unit === 'mm' ? `${significant(size, 2)} mm` : `a bend of ${significant(size, 2)} per mm`;
}

/** A relation by its name, or bounds by what they hold, and whose it is. */
function called({ name, whose, from }: ExcludedRelation): string {
  const bounds = boundsName('');
  const words = name.startsWith(bounds) ? `the limits of “${name.slice(bounds.length)}”` : `“${name}”`;
  if (whose === undefined) return words;
  return `${words} (${whose === 'draft' ? 'the draft’s own' : foundFrom(from)})`;
}

function foundFrom(from: readonly FoundFrom[]): string {
  const said = from.slice(0, SAID).map(({ kind, name, word }) => {
    if (kind === 'measurement') return measurementWords(name as MeasurementName);
    return kind === 'choice'
      ? `the choice ${name}${word === undefined ? '' : `: ${word}`}`
      : `the ${name} as drawn`;
  });
  const rest = from.length - said.length;
  return `from ${listed(rest > 0 ? [...said, `${rest} more`] : said)}`;
}
