import type { Issue } from '../../issue.ts';
import { rounded, significant } from '../../text/figure.ts';
import { inUnit } from '../../text/length.ts';
import { listed } from '../../text/listed.ts';
import { millimetres, type Unit, unitWords } from '../../text/units.ts';
import type { MeasurementName, Sizes } from '../body.ts';
import { essentialNames } from '../found.ts';
import { measurementWords } from '../measurement-words.ts';
import { girths, type Mistake } from '../mistaken.ts';
import { evidenceFor, leastOff, stopping, warning } from './digits.ts';
import { digitsExchanged, lengthNames, type OtherReading, otherReadings } from './other-readings.ts';
import { type Standing, standingOf } from './standing.ts';

/**
 * So many standard deviations off, numbers are doubted, if another reading of them lies within so many; judgement.
 * Digits are weighed instead: every number has some that may change places.
 */
const doubted = 5;
const plausible = 2;

/**
 * Numbers (mm) that are each possible, but were all but certainly meant otherwise: far off from what the others make of
 * them, where another reading is not. Of several such readings the one that makes her likeliest as a whole. What is sure is not doubted.
 */
export function mixedUp(
  sizes: Sizes,
  units: Unit,
  sure: readonly MeasurementName[],
  standing: Standing | undefined = standingAmong(sizes),
): readonly Mistake[] {
  if (!standing) return [];
  if (standing.all <= Math.min(doubted, leastOff(stopping))) return [];
  const found = otherReadings(sizes, units)
    .filter(({ meant }) => ![...meant.keys()].some((name) => sure.includes(name)))
    .filter(({ kind, meant }) =>
      kind === 'digits exchanged'
        ? evidenceOf(meant, sizes, standing) > stopping
        : standing.offOf([...meant.keys()]) > doubted,
    )
    .map((reading) => ({
      reading,
      corrected: standingOf({ ...sizes, ...Object.fromEntries(reading.meant) }),
    }))
    .filter(({ reading, corrected }) => corrected.offOf([...reading.meant.keys()]) <= plausible)
    .toSorted((a, b) => a.corrected.all - b.corrected.all);
  const [best] = found;
  if (!best) return [];
  return [
    {
      issue: issueOf(best.reading, sizes, units, halved(best.reading, sizes, standing)),
      explains: [...best.reading.meant.keys()],
    },
  ];
}

/**
 * Numbers (mm) of which another reading is a good deal likelier, two of its digits exchanged, though she may well be as
 * she was written: each a warning. The likeliest reading of each, none of what is sure.
 */
export function digitsInDoubt(
  sizes: Sizes,
  units: Unit,
  sure: readonly MeasurementName[],
  standing: Standing | undefined = standingAmong(sizes),
): readonly Issue[] {
  if (!standing || standing.all <= leastOff(warning)) return [];
  const doubts: Issue[] = [];
  for (const name of lengthNames) {
    const written = sizes[name];
    if (written === undefined || sure.includes(name)) continue;
    const { most, ofReading } = evidenceFor(name, written, standing.expected(name));
    if (most <= warning) continue;
    let likeliest: Doubt | undefined;
    for (const mm of digitsExchanged(written, units)) {
      const evidence = ofReading(mm);
      if (evidence > (likeliest?.evidence ?? warning)) likeliest = { mm, evidence };
    }
    if (likeliest) doubts.push(inDoubt(name, written, likeliest, units));
  }
  return doubts;
}

/** How measurements stand among each other, where one is there that the others can be told by. */
export const standingAmong = (sizes: Sizes): Standing | undefined =>
  essentialNames.some((name) => sizes[name] !== undefined) ? standingOf(sizes) : undefined;

/** How much speaks for a reading of one number. */
function evidenceOf(meant: OtherReading['meant'], sizes: Sizes, standing: Standing): number {
  const [entry] = meant;
  if (!entry) return 0;
  const [name, mm] = entry;
  return evidenceFor(name, sizes[name] ?? 0, standing.expected(name)).ofReading(mm);
}

const codes = {
  exchanged: 'measurements-exchanged',
  'other unit': 'unit-mistaken',
  'digits exchanged': 'digits-exchanged',
} as const;

/** So many standard deviations off, twice a girth may be what was meant as well. */
const asWell = 4;

/** Twice the girth whose digits look exchanged, mm, where half of it may have been written instead. */
function halved({ kind, meant }: OtherReading, sizes: Sizes, standing: Standing): number | undefined {
  const [name] = meant.keys();
  if (kind !== 'digits exchanged' || !name || !girths.has(name)) return undefined;
  const { mean, spread } = standing.expected(name);
  const doubled = 2 * (sizes[name] ?? 0);
  return Math.abs(doubled - mean) <= asWell * spread ? doubled : undefined;
}

function issueOf(
  { kind, meant, unit }: OtherReading,
  sizes: Sizes,
  units: Unit,
  doubled: number | undefined,
): Issue {
  const names = [...meant.keys()];
  const [path = 'units'] = names;
  const told = (mm: number | undefined): string => inUnit((mm ?? 0) / millimetres[units], units);
  const written = listed(names.map((name) => `${measurementWords(name)} of ${told(sizes[name])}`)).replace(
    ' and ',
    ' and the ',
  );
  const looks =
    kind === 'exchanged'
      ? `The ${written} look exchanged`
      : kind === 'other unit' && unit
        ? `The ${written} looks like ${unitWords[unit]}`
        : `The ${written} looks as if two digits had changed places`;
  const write = [...meant].map(([name, mm]) => `${name}: ${rounded(mm / millimetres[units], 2)}`);
  const twice = doubled === undefined ? '' : `, or ${told(doubled)} if half a girth was written`;
  return {
    code: codes[kind],
    severity: 'error',
    path,
    value: (sizes[path as MeasurementName] ?? 0) / millimetres[units],
    message: `${looks}: the others make ${kind === 'exchanged' ? 'them' : 'it'} next to impossible. Write ${listed(write)}${twice}; or, if ${kind === 'exchanged' ? 'they were measured twice and are' : 'it was measured twice and is'} right as written, add sure: [${path}].`,
  };
}

/** Another reading of a number, mm, and what speaks for it. */
interface Doubt {
  readonly mm: number;
  readonly evidence: number;
}

function inDoubt(name: MeasurementName, written: number, { mm, evidence }: Doubt, units: Unit): Issue {
  const told = (length: number): string => inUnit(length / millimetres[units], units);
  return {
    code: 'digits-exchanged',
    severity: 'warning',
    path: name,
    value: written / millimetres[units],
    message: `The ${measurementWords(name)} of ${told(written)} may have two digits exchanged: by the others ${told(mm)} is ${oddsWords(evidence)} times as likely. Measure it again, or, if it was measured twice, add sure: [${name}].`,
  };
}

/** Odds of a logarithm to one digit: "about 30". */
const oddsWords = (logarithm: number): string => `about ${significant(Math.exp(logarithm), 1)}`;
