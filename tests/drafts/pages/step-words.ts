import type { Step } from '../../../engine/pattern/garment.ts';
import type { Ground } from '../../../engine/pattern/quantity.ts';
import { commonPractice } from '../../../engine/sources.ts';

/** A step as a page tells it, for any body: rules with their values, choices and all else by name. */
export function stepWords({ says, from, formula, source }: Step): string {
  let words = '';
  let unitSaid = false;
  for (const part of says) {
    if (typeof part === 'string') {
      // Behind a name, or a rule with its unit, the unit of the number that stood there goes.
      words += unitSaid ? part.replace(/^ mm\b/, '') : part;
      unitSaid = false;
      continue;
    }
    const ground = from[part];
    if (!ground) continue;
    const name = nameOf(ground);
    const { kind } = ground.origin;
    if (kind === 'rule' || kind === 'choice') {
      words += name;
      unitSaid = formula === undefined && name.endsWith(' mm');
    } else if (formula === undefined ? endsWith(words, name) : isLabelled(words)) words = words.trimEnd();
    else {
      words += formula === undefined ? `*${name}*` : name;
      unitSaid = formula === undefined;
    }
  }
  const isMeasured = formula !== undefined && says.every((part) => typeof part === 'string');
  const measured = isMeasured && !words.endsWith('on the drawing') ? ', measured on the drawing' : '';
  const sources = sourcesOf(from, source);
  return `${words.trim()}${measured}${sources.length > 0 ? ` (${sources.join('; ')})` : ''}`;
}

/** A rule as the pages write it: "B1 15 mm", "B9 2°", "B13 0.27"; else the name in lower case, a choice as code. */
function nameOf({ origin, name, value = 0, unit }: Ground): string {
  switch (origin.kind) {
    case 'rule': {
      const written = unit === 'rad' ? (value * 180) / Math.PI : value;
      const figure = Math.round(written * 1e9) / 1e9;
      return `${origin.id} ${figure}${unit === 'mm' ? ' mm' : unit === 'rad' ? '°' : ''}`;
    }
    case 'choice':
      return `\`${name}\``;
    case 'measurement':
    case 'fitting':
      return name;
    case 'step':
      return `${name.charAt(0).toLowerCase()}${name.slice(1)}`;
  }
}

const endsWith = (words: string, name: string): boolean =>
  words.trimEnd().toLowerCase().endsWith(name.toLowerCase());

/** Whether words name the value that follows: those behind the last sign or word that computes. */
function isLabelled(words: string): boolean {
  const run = /[\p{L}\p{N}'’-]*(?: [\p{L}\p{N}'’-]+)* $/u.exec(words)?.[0] ?? '';
  const computing = ['of', 'x', 'least', 'most', 'but', 'and', 'arc', 'angle', '-'];
  const last = run
    .trim()
    .split(' ')
    .findLastIndex((word) => computing.includes(word) || /^\d/.test(word));
  return (
    run
      .trim()
      .split(' ')
      .slice(last + 1)
      .join('') !== ''
  );
}

/** Publications that are named by the rules inside or by the step itself; common practice goes without saying. */
function sourcesOf(from: readonly Ground[], source: string): readonly string[] {
  const ofRules = from.flatMap(({ origin }) => (origin.kind === 'rule' ? [origin.source] : []));
  const generic = ['measurement', 'styling', 'measurement and styling', 'construction', 'fitting'];
  const own = ofRules.length > 0 || generic.includes(source) ? [] : [source];
  return [...new Set([...ofRules, ...own])].filter((each) => each !== commonPractice);
}
