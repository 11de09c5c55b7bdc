import type { z } from 'zod';
import type { Issue } from '../issue.ts';

import type { IssueCode } from '../issue-codes/issue-codes.ts';
import { nearestWords } from '../text/nearest-word.ts';
import { numberIn, type Unit, unitNames } from '../text/units.ts';
import { withoutTurns } from '../text/without-turns.ts';
import { type MeasurementName, measurementNames } from './body.ts';
import { type BodyField, bodyFields, bodyFile } from './body-file.ts';
import { braSizeRefused, cupRefused, isBraField } from './bra-size.ts';
import { essentialNames } from './found.ts';
import { howTaken } from './how-taken.ts';
import { measurementWords } from './measurement-words.ts';

/** What a file says, as far as it can be read: numbers still in the file's own unit, the slope in degrees. */
export interface WrittenNumbers {
  readonly name: string;
  readonly age: number | undefined;
  readonly units: Unit | undefined;
  readonly cup: string | undefined;
  /** What was measured twice, and stays as it is. */
  readonly sure: readonly MeasurementName[];
  /** Whether contradicting measurements are moved to the most likely body behind them. */
  readonly reconcile: boolean;
  readonly numbers: Readonly<Partial<Record<MeasurementName, number>>>;
}

const { shape } = bodyFile;

/** The fitting is read by itself, with its units. */
type ReadField = Exclude<BodyField, 'fitting'>;

/** Reads every field by itself, so that one mistake hides no other. */
export function readNumbers(fields: Readonly<Record<string, unknown>>): {
  readonly written: WrittenNumbers;
  readonly issues: readonly Issue[];
} {
  const issues = unknownFields(fields);
  const read = <Value>(field: ReadField, type: z.ZodType<Value>): Value | undefined => {
    const value = Object.hasOwn(fields, field) ? fields[field] : undefined;
    if (value === undefined || value === null) return undefined;
    const parsed = type.safeParse(value);
    if (parsed.success) return parsed.data;
    issues.push(unreadable(field, value));
    return undefined;
  };
  const numbers: Partial<Record<MeasurementName, number>> = {};
  for (const name of measurementNames) {
    const value = read<number | string | undefined>(name, shape[name]);
    const number = typeof value === 'string' ? numberIn(value) : value;
    if (number !== undefined) numbers[name] = number;
  }
  issues.push(...missingFields(fields));
  const written = {
    name: withoutTurns(String(read('name', shape.name) ?? 'unnamed')),
    age: read('age', shape.age),
    units: read('units', shape.units),
    cup: read('cup', shape.cup),
    sure: read('sure', shape.sure) ?? [],
    reconcile: read('reconcile', shape.reconcile) ?? false,
    numbers,
  };
  return { written, issues };
}

/** So many names are proposed for one that is not known. */
const MOST_PROPOSED = 3;

function nearestTo(field: string): string {
  const nearest = nearestWords(field, bodyFields, MOST_PROPOSED);
  return nearest.length > 0
    ? ` Do you mean ${nearest.join(' or ')}?`
    : ' No garment is drawn from such a one: leave it out.';
}

/** So many unknown fields are named one by one. */
const MOST_UNKNOWN = 12;

function unknownFields(fields: Readonly<Record<string, unknown>>): Issue[] {
  const known: ReadonlySet<string> = new Set(bodyFields);
  const unknown = Object.keys(fields).filter((field) => !known.has(field));
  const issues = unknown
    .slice(0, MOST_UNKNOWN)
    .map((field) =>
      isBraField(field)
        ? issue('bra-size-not-read', shown(field), braSizeRefused(shown(fields[field])))
        : issue(
            'unknown-field',
            shown(field),
            `There is no measurement called ${shown(field)}.${nearestTo(field)}`,
          ),
    );
  const more = unknown.length - issues.length;
  if (more > 0)
    issues.push(issue('unknown-fields', '', `There are ${more} more fields that are no measurements.`));
  return issues;
}

const missingFields = (fields: Readonly<Record<string, unknown>>): readonly Issue[] =>
  (['units', ...essentialNames] as const)
    .filter((field) => !Object.hasOwn(fields, field) || fields[field] === undefined || fields[field] === null)
    .map((field) =>
      field === 'units'
        ? issue('units-missing', field, `Say in which unit you measured: units: ${unitNames.join(', ')}.`)
        : issue(
            'measurement-missing',
            field,
            `Nothing can be drafted without the ${measurementWords(field)}. ${howTaken[field]}`,
          ),
    );

function unreadable(field: ReadField, value: unknown): Issue {
  const given = shown(value);
  const simple = typeof value === 'string' || Number.isFinite(value) ? { value: given } : {};
  const refuse = (code: IssueCode, message: string): Issue => ({ ...issue(code, field, message), ...simple });
  switch (field) {
    case 'units':
      return refuse('unknown-unit', `${given} is no unit for measurements: use ${unitNames.join(', ')}.`);
    case 'cup':
      return refuse('unknown-cup', cupRefused(given));
    case 'age':
      return {
        ...refuse('age-out-of-range', `${given} is no age: give whole years, such as 34.`),
        limits: { min: 0, max: 130, unit: 'years' },
      };
    case 'sure':
      return refuse('sure-not-understood', notSure(value));
    case 'reconcile':
      return refuse(
        'reconcile-not-understood',
        `Write reconcile: true, or leave it out: ${given} is neither.`,
      );
    case 'name':
      return refuse('name-unusable', 'The name must be one line of text, no longer than 80 characters.');
    default:
      return refuse(
        'not-a-number',
        `${given} is no number for the ${measurementWords(field)}: write it like 36.25, 36 1/4 or 36-1/4, without the unit.`,
      );
  }
}

/** Why a list of sure measurements is none. */
function notSure(value: unknown): string {
  const known: readonly unknown[] = measurementNames;
  const how =
    'Write the measurements that you took twice as a list of their names, such as sure: [waistGirth].';
  if (!Array.isArray(value)) return how;
  const stray: unknown = value.find((name) => !known.includes(name));
  if (stray === undefined) return how;
  const nearest = typeof stray === 'string' ? nearestWords(stray, measurementNames, MOST_PROPOSED) : [];
  const hint = nearest.length > 0 ? `Do you mean ${nearest.join(' or ')}?` : how;
  return `There is no measurement called ${shown(stray)} to be sure of. ${hint}`;
}

const issue = (code: IssueCode, path: string, message: string): Issue => ({
  code,
  severity: 'error',
  path,
  message,
});

/** A value from a file as a message shows it: short, on one line. */
function shown(value: unknown): string {
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object') return 'a group of fields';
  if (Number.isNaN(value)) return '.nan';
  const text = String(value).replace(/[\p{Cc}\p{Cs}]+/gu, ' ');
  return text.length > 40 ? `${text.slice(0, 39)}…` : text === '' ? 'an empty text' : text;
}
