import fc from 'fast-check';
import { dress } from '../../drafts/dress.ts';
import { type MeasurementName, measurementNames } from '../../engine/body/body.ts';
import { readBody } from '../../engine/body/read.ts';
import { usualError } from '../../engine/body/reconcile/usual-error.ts';
import { evaluate } from '../../engine/evaluate.ts';
import { type FullSet, fullSets, misreadBy, movedIn } from '../engine/body/full-sets.ts';
import {
  caught,
  digitsExchanged,
  exchanged,
  farDigitsExchanged,
  four,
  girths,
  inOtherUnit,
  lengths,
  nine,
  readSets,
  type SlipOfPen,
  writtenIn,
} from '../engine/body/mixed-up/slips.ts';
import { type BodyData, bodyGrid, plausibleBodies, plausibleBody } from '../plausible-bodies.ts';
import { table } from './timing.ts';

/**
 * What becomes of measurements that were misread: how many sets draft before and after they are reconciled, how near they
 * come to the truth, and how many slips of the pen are named. `npx tsx tests/bench/misread-table.ts [sets]`
 */
const count = Number(process.argv[2] ?? 200);

const drafts = (set: FullSet, reconcile: boolean): boolean => {
  const made = evaluate(dress, { units: 'mm', ...set, reconcile }, {});
  return made.ok && made.value.report.ok;
};

/** Sets of which every length is off by a random amount (mm), drafted as they are and reconciled. */
function reconciledRow(mm: number, variety: number): readonly string[] {
  const truths = fullSets(count, variety).filter((truth) => drafts(truth, false));
  const sets = truths.map((truth, i) => ({ truth, set: misreadBy(mm, truth, 90_000 + i) }));
  const before = sets.filter(({ set }) => drafts(set, false)).length;
  const after = sets.filter(({ set }) => drafts(set, true)).length;
  const pairs = sets.flatMap(({ truth, set }) => {
    const read = readBody({ units: 'mm', ...set, reconcile: true });
    const moved = movedIn(set);
    if (!read.ok || moved.length === 0) return [];
    const off = (of: Readonly<Record<MeasurementName, number>>): number =>
      Math.hypot(...moved.map((name) => (of[name] - truth[name]) / usualError[name]));
    return [{ written: off(set), reconciled: off(read.value.size) }];
  });
  const mean = (of: (pair: (typeof pairs)[number]) => number): string =>
    (pairs.reduce((sum, pair) => sum + of(pair), 0) / pairs.length).toFixed(2);
  const nearer = pairs.filter(({ written, reconciled }) => reconciled <= written).length / pairs.length;
  return [
    `${mm}`,
    `${variety}`,
    `${sets.length}`,
    `${sets.length - before}`,
    `${sets.length - after}`,
    `${pairs.length}`,
    mean(({ written }) => written),
    mean(({ reconciled }) => reconciled),
    nearer.toFixed(2),
  ];
}

const heading = [
  'off by, mm',
  'variety',
  'sets',
  'refused',
  'reconciled: refused',
  'moved',
  'from truth, written',
  'reconciled',
  'nearer',
];
process.stdout.write(
  `${table([heading, ...[10, 20].flatMap((mm) => [0.7, 1].map((variety) => reconciledRow(mm, variety)))])}\n`,
);

/**
 * Sets of which every length is off by a random amount (mm), and one in turn by a blunder more: how many contradict
 * themselves, and of those how often the blunder is called misread, or first to blame, and how often another is.
 */
function blunderRow(mm: number, blunder: number): readonly string[] {
  const told = fullSets(count).flatMap((truth, i) => {
    const off = misreadBy(mm, truth, 90_000 + i);
    const own = blunder === 0 ? undefined : lengths[i % lengths.length];
    const set = own ? { ...off, [own]: off[own] + (i % 2 === 0 ? blunder : -blunder) } : off;
    const read = readBody({ units: 'mm', ...set, reconcile: true });
    if (!read.ok) return [];
    const known = Object.entries(read.value.known);
    const named = (suspicion: string): readonly string[] =>
      known.flatMap(([name, from]) =>
        from.from === 'reconciled' && from.suspicion === suspicion ? [name] : [],
      );
    const moved = known.some(([, from]) => from.from === 'reconciled');
    return [
      {
        own,
        moved,
        misread: named('misread'),
        first: named('first to blame'),
        two: named('one of two'),
      },
    ];
  });
  const share = (of: readonly boolean[]): string =>
    `${of.filter(Boolean).length} of ${told.filter(({ moved }) => moved).length}`;
  const right = (of: 'misread' | 'first' | 'two') =>
    share(told.map((each) => each[of].some((name) => name === each.own)));
  const wrong = (of: 'misread' | 'first' | 'two') =>
    share(told.map((each) => each[of].length > 0 && !each[of].some((name) => name === each.own)));
  return [
    `${mm}`,
    `${blunder}`,
    `${told.length}`,
    right('misread'),
    wrong('misread'),
    right('first'),
    wrong('first'),
    right('two'),
    wrong('two'),
  ];
}

process.stdout.write(
  `${table([
    [
      'off by, mm',
      'one more by',
      'sets',
      'it is misread',
      'another is',
      'it is first to blame',
      'another is',
      'it is one of two',
      'others are',
    ],
    ...[5, 10].flatMap((mm) => [0, 30, 50, 80].map((blunder) => blunderRow(mm, blunder))),
  ])}\n`,
);

/** How many of those that were written down right are stopped. */
const codes = ['measurements-exchanged', 'unit-mistaken', 'digits-exchanged', 'girth-halved'];
const right = [
  ...plausibleBodies(5 * count),
  ...bodyGrid(),
  ...fc.sample(plausibleBody, { numRuns: 5 * count, seed: 42 }),
];
/** As it is, and as it is written to a millimetre in centimetres: other digits stand side by side. */
const inCm = (data: BodyData): BodyData =>
  Object.fromEntries(
    Object.entries(data).map(([name, value]) =>
      name === 'units'
        ? [name, 'cm']
        : typeof value === 'number' && name !== 'shoulderSlope'
          ? [name, value / 10]
          : [name, value],
    ),
  );
const isStopped = (data: BodyData): boolean =>
  readBody(data).issues.some(({ code, severity }) => codes.includes(code) && severity === 'error');
const isDoubted = (data: BodyData): boolean =>
  readBody(data).issues.some(({ code, severity }) => codes.includes(code) && severity === 'warning');
for (const [units, all] of [
  ['mm', right],
  ['cm', right.map(inCm)],
] as const)
  process.stdout.write(
    `of ${all.length} bodies written down right in ${units}, ${all.filter(isStopped).length} stopped, ${all.filter(isDoubted).length} warned of digits\n`,
  );
for (const mm of [10, 20]) {
  const off = fullSets(count).map((set, i) => ({ units: 'mm', ...misreadBy(mm, set, 90_000 + i) }));
  process.stdout.write(
    `of ${off.length} full sets off by ${mm} mm, ${off.filter(isStopped).length} stopped, ${off.filter(isDoubted).length} warned of digits\n`,
  );
}

const sets = readSets(count);
const row = (
  label: string,
  names: readonly MeasurementName[],
  units: 'cm' | 'in',
  code: string,
  slips: readonly (readonly [SlipOfPen, readonly MeasurementName[]])[],
): readonly string[] => {
  const written = sets.map((set) => writtenIn(set, names, units));
  const all = slips.map(([slip, own]) => caught(written, units, slip, own, code));
  const sum = (of: 'sets' | 'named' | 'refused' | 'doubted' | 'warned' | 'misnamed'): number =>
    all.reduce((total, each) => total + each[of], 0);
  const share = (of: 'named' | 'refused' | 'doubted' | 'warned' | 'misnamed'): string =>
    ((100 * sum(of)) / sum('sets')).toFixed(1);
  return [
    label,
    `${names.length}`,
    `${sum('sets')}`,
    share('named'),
    share('refused'),
    share('doubted'),
    share('warned'),
    share('misnamed'),
  ];
};
const pair = (one: MeasurementName, other: MeasurementName, names: readonly MeasurementName[]) =>
  row(`${one} and ${other} exchanged`, names, 'cm', 'measurements-exchanged', [
    [exchanged(one, other), [one, other]],
  ]);
const each = (names: readonly MeasurementName[], slip: (name: MeasurementName) => SlipOfPen) =>
  names
    .filter((name) => lengths.some((length) => length === name))
    .map((name): readonly [SlipOfPen, readonly MeasurementName[]] => [slip(name), [name]]);
const rows = [four, nine, measurementNames].flatMap((names) => [
  pair('waistGirth', 'hipGirth', names),
  pair('bustGirth', 'waistGirth', names),
  row(
    'one in inches among cm',
    names,
    'cm',
    'unit-mistaken',
    each(names, (name) => inOtherUnit(name, 1 / 2.54)),
  ),
  row(
    'one in cm among inches',
    names,
    'in',
    'unit-mistaken',
    each(names, (name) => inOtherUnit(name, 2.54)),
  ),
  row(
    'one in mm among cm',
    names,
    'cm',
    'unit-mistaken',
    each(names, (name) => inOtherUnit(name, 10)),
  ),
  row('two first digits exchanged', names, 'cm', 'digits-exchanged', each(names, digitsExchanged)),
  row(
    'a girth off by more than 8 % so',
    names,
    'cm',
    'digits-exchanged',
    [0, 1].flatMap((place) =>
      each(
        names.filter((name) => girths.some((girth) => girth === name)),
        (name) => farDigitsExchanged(name, place),
      ),
    ),
  ),
]);
process.stdout.write(
  table([
    [
      'slip',
      'measurements',
      'sets',
      'named %',
      'else refused %',
      'named in a warning %',
      'warned %',
      'another blamed %',
    ],
    ...rows,
  ]),
);
