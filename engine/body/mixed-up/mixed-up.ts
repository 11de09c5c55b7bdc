import type { Issue } from '../../issue.ts';
import { rounded } from '../../text/figure.ts';
import { inUnit } from '../../text/length.ts';
import { listed } from '../../text/listed.ts';
import { millimetres, type Unit, unitWords } from '../../text/units.ts';
import type { MeasurementName, Sizes } from '../body.ts';
import { essentialNames } from '../found.ts';
import { measurementWords } from '../measurement-words.ts';
import type { Mistake } from '../mistaken.ts';
import { type OtherReading, otherReadings } from './other-readings.ts';
import { standingOf } from './standing.ts';

/**
 * So many standard deviations off, numbers are doubted, if another reading of them lies within so many. Of digits that
 * may change places every number has some, so there chance is nearer; judgement.
 */
const doubted = { exchanged: 5, 'other unit': 5, 'digits exchanged': 6 } as const;
const plausible = 2;

/**
 * Numbers (mm) that are each possible, but were all but certainly meant otherwise: far off from what the others make of
 * them, where another reading is not. Of several such readings the one that makes her likeliest as a whole. What is sure is not doubted.
 */
export function mixedUp(sizes: Sizes, units: Unit, sure: readonly MeasurementName[]): readonly Mistake[] {
  if (!essentialNames.some((name) => sizes[name] !== undefined)) return [];
  const standing = standingOf(sizes);
  if (standing.all <= Math.min(...Object.values(doubted))) return [];
  const found = otherReadings(sizes, units)
    .filter(({ meant }) => ![...meant.keys()].some((name) => sure.includes(name)))
    .filter(({ kind, meant }) => standing.offOf([...meant.keys()]) > doubted[kind])
    .map((reading) => ({
      reading,
      corrected: standingOf({ ...sizes, ...Object.fromEntries(reading.meant) }),
    }))
    .filter(({ reading, corrected }) => corrected.offOf([...reading.meant.keys()]) <= plausible)
    .toSorted((a, b) => a.corrected.all - b.corrected.all);
  const [best] = found;
  if (!best) return [];
  return [{ issue: issueOf(best.reading, sizes, units), explains: [...best.reading.meant.keys()] }];
}

const codes = {
  exchanged: 'measurements-exchanged',
  'other unit': 'unit-mistaken',
  'digits exchanged': 'digits-exchanged',
} as const;

function issueOf({ kind, meant, unit }: OtherReading, sizes: Sizes, units: Unit): Issue {
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
  return {
    code: codes[kind],
    severity: 'error',
    path,
    value: (sizes[path as MeasurementName] ?? 0) / millimetres[units],
    message: `${looks}: the others make ${kind === 'exchanged' ? 'them' : 'it'} next to impossible. Write ${listed(write)}; or, if ${kind === 'exchanged' ? 'they were measured twice and are' : 'it was measured twice and is'} right as written, add sure: [${path}].`,
  };
}
