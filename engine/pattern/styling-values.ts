import type { Issue, Result } from '../issue.ts';
import { nearestWord } from '../text/nearest-word.ts';
import { writtenLength } from '../text/written-length.ts';
import type { Choice, Styling } from './styling.ts';

/** The choices that are not as usual. */
export function madeOtherwise(choices: readonly Choice[], styling: Styling): Styling {
  const otherwise: Record<string, number | string> = {};
  for (const { name, default: usual } of choices) {
    const made = styling[name];
    if (made !== undefined && made !== usual) otherwise[name] = made;
  }
  return otherwise;
}

/**
 * The choices made for one garment, from whatever was given in a file or on the command line: defaults where
 * nothing was said, numbers within their range. Numbers may be written as text, lengths with their unit: `1/2 in`, `2,5 m`.
 *
 * Issues: `styling-not-a-list`, `unknown-styling` (with the nearest known name), `styling-not-a-number`,
 * `styling-out-of-range` (with the limits), `unknown-styling-word` (with the words that are known).
 */
export function resolveStyling(choices: readonly Choice[], given: unknown): Result<Styling> {
  if (given === undefined || given === null) return { ok: true, value: asUsual(choices), issues: [] };
  if (typeof given !== 'object' || Array.isArray(given)) return { ok: false, issues: [notAList] };
  const names = choices.map((c) => c.name);
  const issues: Issue[] = Object.keys(given)
    .filter((name) => !names.includes(name))
    .map((name) => unknownName(name, names));
  const styling: Record<string, number | string> = {};
  for (const choice of choices) {
    const raw: unknown = Object.hasOwn(given, choice.name) ? Reflect.get(given, choice.name) : undefined;
    const made = raw === undefined || raw === null ? choice.default : choose(choice, raw);
    if (typeof made === 'object') issues.push(made);
    else styling[choice.name] = made;
  }
  return issues.length > 0 ? { ok: false, issues } : { ok: true, value: styling, issues: [] };
}

function asUsual(choices: readonly Choice[]): Styling {
  const styling: Record<string, number | string> = {};
  for (const choice of choices) styling[choice.name] = choice.default;
  return styling;
}

function choose(choice: Choice, raw: unknown): number | string | Issue {
  if (choice.kind === 'word') {
    const word = shown(raw);
    return choice.words.includes(word) ? word : unknownWord(choice.name, word, choice.words);
  }
  if (choice.kind === 'number or auto' && raw === 'auto') return 'auto';
  const value = typeof raw === 'string' ? numberOf(choice, raw) : raw;
  if (typeof value !== 'number' || !Number.isFinite(value)) return notANumber(choice, shown(raw));
  if (value < choice.min || value > choice.max) return outOfRange(choice, value);
  if (choice.unit === 'count' && !Number.isInteger(value)) return notANumber(choice, shown(raw));
  return value;
}

/** A number written as text; a length in any unit, in mm. A plain number may have an exponent, as programs write it. */
function numberOf({ unit }: NumberChoice, text: string): number | undefined {
  const found = writtenLength(text);
  if (found) return found.withUnit && unit !== 'mm' ? undefined : found.value;
  return text.trim() === '' ? undefined : Number(text);
}

type NumberChoice = Exclude<Choice, { kind: 'word' }>;

const notAList: Issue = {
  code: 'styling-not-a-list',
  severity: 'error',
  path: 'styling',
  message: 'The styling should be a list of names with their values, such as “casingDepth: 15”.',
};

function unknownName(name: string, known: readonly string[]): Issue {
  const near = nearestWord(name, known);
  const hint = near ? `Did you mean “${near}”?` : `Known are: ${known.join(', ')}.`;
  return {
    code: 'unknown-styling',
    severity: 'error',
    path: short(name),
    message: `This garment has no choice called “${short(name)}”. ${hint}`,
  };
}

function unknownWord(name: string, word: string, words: readonly string[]): Issue {
  return {
    code: 'unknown-styling-word',
    severity: 'error',
    path: name,
    message: `“${name}” can be ${words.map((w) => `“${w}”`).join(' or ')}, not “${word}”.`,
    value: word,
  };
}

const expected: Readonly<Record<NumberChoice['unit'], string>> = {
  mm: 'a number with its unit (mm, cm, m, in, ft or yd)',
  count: 'a whole number',
  degrees: 'a number',
  share: 'a number',
  ratio: 'a number',
};

function notANumber(choice: NumberChoice, word: string): Issue {
  const kind = expected[choice.unit];
  const orAuto = choice.kind === 'number or auto' ? ' or “auto”' : '';
  return {
    code: 'styling-not-a-number',
    severity: 'error',
    path: choice.name,
    message: `“${choice.name}” should be ${kind}${orAuto}, not “${word}”.`,
    value: word,
    limits: { min: choice.min, max: choice.max, unit: choice.unit },
  };
}

function outOfRange(choice: NumberChoice, value: number): Issue {
  const unit = { mm: ' mm', degrees: '°', share: '', ratio: '', count: '' }[choice.unit];
  return {
    code: 'styling-out-of-range',
    severity: 'error',
    path: choice.name,
    message: `“${choice.name}” is ${value}${unit}; this draft takes ${choice.min} to ${choice.max}${unit}.`,
    value,
    limits: { min: choice.min, max: choice.max, unit: choice.unit },
  };
}

/** What was written, short enough to be quoted back. */
const shown = (raw: unknown): string =>
  typeof raw === 'object' ? (Array.isArray(raw) ? 'a list' : 'a group') : short(String(raw));

const short = (text: string): string => (text.length > 40 ? `${text.slice(0, 40)}…` : text);
