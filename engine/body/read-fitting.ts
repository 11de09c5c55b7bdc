import type { Issue } from '../issue.ts';
import type { IssueCode } from '../issue-codes/issue-codes.ts';
import { inUnit } from '../text/length.ts';
import { nearestWord } from '../text/nearest-word.ts';
import { millimetres, numberIn, type Unit } from '../text/units.ts';
import {
  changeWords,
  type FittedLevel,
  type FittedSeam,
  type FittingChange,
  fittedLevels,
  fittedSeams,
  isOpposite,
  leastAllowance,
  mostOf,
  oneSided,
  onSide,
  placeOf,
  plainChangeNames,
  sideOf,
  trialAllowance,
} from './fitting.ts';
import { type Side, sides } from './side.ts';

const seamKinds = ['take in', 'let out'] as const;

const changeNames: readonly string[] = [...seamKinds, ...plainChangeNames];

/** Nobody pins so many changes at one fitting. */
const MOST_CHANGES = 60;

const tooMany = (count: number): Issue => ({
  code: 'fitting-too-long',
  severity: 'error',
  path: 'fitting',
  value: count,
  limits: { min: 0, max: MOST_CHANGES, unit: 'changes' },
  message: `The fitting lists ${count} changes; write at most ${MOST_CHANGES}, those of this one fitting.`,
});

type Read = { readonly change: FittingChange } | { readonly issue: Issue };

/** Reads the list of changes found at a fitting, each by itself; then what undoes each other or goes too far. */
export function readFitting(
  list: unknown,
  units: Unit,
): { readonly changes: readonly FittingChange[]; readonly issues: readonly Issue[] } {
  if (list === undefined || list === null) return { changes: [], issues: [] };
  if (!Array.isArray(list)) return { changes: [], issues: [notAList] };
  if (list.length > MOST_CHANGES) return { changes: [], issues: [tooMany(list.length)] };
  const read = list.map((item: unknown, i) => readChange(item, `fitting/${i + 1}`, units));
  const changes = read.flatMap((r) => ('change' in r ? [r.change] : []));
  const issues = read.flatMap((r) => ('issue' in r ? [r.issue] : []));
  return { changes, issues: [...issues, ...contradicting(changes), ...tooMuch(changes, units)] };
}

function readChange(item: unknown, path: string, units: Unit): Read {
  const refuse = (code: IssueCode, message: string): Read => ({
    issue: { code, severity: 'error', path, message },
  });
  if (typeof item !== 'object' || item === null || Array.isArray(item))
    return refuse('fitting-not-understood', `Write each change like "round back: 1". ${known}`);
  const fields = item as Readonly<Record<string, unknown>>;
  const names = Object.keys(fields);
  const [name, second] = names.filter((field) => changeNames.includes(field));
  if (name === undefined) return refuse('unknown-fitting', unknownChange(names[0] ?? ''));
  if (second !== undefined)
    return refuse(
      'fitting-not-understood',
      `Write ${name} and ${second} as two changes, each with its own dash.`,
    );
  const kind = seamKinds.find((seamKind) => seamKind === name);
  const plain = plainChangeNames.find((change) => change === name);
  const sided = plain && oneSided[plain];
  const takes = kind ? [kind, 'level', 'by'] : sided ? [name, 'side'] : [name];
  const stray = names.find((field) => !takes.includes(field));
  if (stray === 'side') return refuse('fitting-not-one-sided', onBothSides(name));
  if (stray !== undefined)
    return refuse(
      'fitting-not-understood',
      `"${short(stray)}" means nothing beside ${name}: it takes ${takes.join(', ')}.`,
    );
  const written = fields[kind ? 'by' : name];
  const mm = amount(written, units);
  if (mm === undefined)
    return refuse(
      'fitting-amount',
      `Say by how much after "${kind ? 'by' : name}", above nothing and without the unit: ${short(written)} is no such number.`,
    );
  if (!kind) {
    if (!plain) return refuse('unknown-fitting', unknownChange(name));
    if (fields.side === undefined && sided !== 'must') return { change: { kind: plain, mm } };
    const side = sides.find((candidate) => candidate === fields.side);
    return side ? { change: { kind: plain, mm, side } } : refuse('fitting-side', whichSide(name, sided));
  }

  const seam = fittedSeams.find((candidate) => candidate === fields[kind]);
  if (!seam)
    return refuse(
      'unknown-seam',
      `${short(fields[kind])} is no seam to ${kind}: use ${fittedSeams.join(', ')}.`,
    );
  const levels: readonly FittedLevel[] = fittedLevels[seam];
  const level = levels.find((candidate) => candidate === fields.level);
  if (!level) return refuse('unknown-level', wrongLevel(seam, levels, kind));
  return { change: { kind, seam, level, mm } };
}

const known = `Known are ${changeNames.join(', ')}.`;

const notAList: Issue = {
  code: 'fitting-not-a-list',
  severity: 'error',
  path: 'fitting',
  message: `The fitting is a list: one change a line, each with a dash, such as "- round back: 1". ${known}`,
};

function unknownChange(name: string): string {
  const nearest = nearestWord(name, changeNames);
  return `${short(name)} is no change known at a fitting. ${nearest ? `Do you mean ${nearest}?` : known}`;
}

const onBothSides = (name: string): string =>
  `"${name}" is made on both sides alike: on one it would move the pieces that are cut whole. Leave out the side. On one side can be made ${Object.keys(oneSided).join(', ')}.`;

const whichSide = (name: string, sided: 'may' | 'must' | undefined): string =>
  `Write "side: left" or "side: right" below ${name}, without a dash, as she would say it herself${sided === 'may' ? ', or nothing for both' : ''}.`;

const wrongLevel = (seam: FittedSeam, levels: readonly FittedLevel[], kind: string): string =>
  `The ${seam} can be ${kind === 'take in' ? 'taken in' : 'let out'} at the level of ${anyOf(levels)}; elsewhere it runs on from there.`;

const anyOf = (words: readonly string[]): string => `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;

/** An amount in mm, or nothing when it is none. */
function amount(written: unknown, units: Unit): number | undefined {
  const number = typeof written === 'string' ? numberIn(written) : written;
  if (typeof number !== 'number' || !Number.isFinite(number) || number <= 0) return undefined;
  return number * millimetres[units];
}

const contradicting = (changes: readonly FittingChange[]): readonly Issue[] =>
  changes.flatMap((change) =>
    changes
      .filter((other) => isOpposite(change, other))
      .map((other) => ({
        code: 'fitting-contradicts',
        severity: 'error' as const,
        path: 'fitting',
        message: `"${changeWords(change)}" and "${changeWords(other)}" undo each other. Say only what is left of the two.`,
      })),
  );

/** What is too much of one change; what is made on both sides counts together with what is made on one. */
function tooMuch(changes: readonly FittingChange[], units: Unit): readonly Issue[] {
  const found = sides.flatMap((side) => tooMuchOn(side, changes, units));
  return found.filter(({ message }, i) => found.findIndex((other) => other.message === message) === i);
}

/** All there is of one change. */
interface Sum {
  readonly words: string;
  readonly kind: FittingChange['kind'];
  readonly mm: number;
  readonly most: number;
}

/** Why a seam cannot be let out or taken in further: the trial bodice has no more cloth there. */
function whyOf(kind: FittingChange['kind'], units: Unit): string {
  const told = (mm: number): string => inUnit(mm / millimetres[units], units);
  const allowance = `A trial bodice has allowances of ${told(trialAllowance)}`;
  if (kind === 'let out') return `${allowance}, and a seam needs ${told(leastAllowance)} of them. `;
  return kind === 'take in' ? `${allowance}, and no deeper fold is pinned. ` : '';
}

function tooMuchOn(side: Side, changes: readonly FittingChange[], units: Unit): readonly Issue[] {
  const sums = new Map<string, Sum>();
  for (const change of onSide(changes, side)) {
    const key = `${change.kind} ${placeOf(change)}`;
    const before = sums.get(key);
    const words = before && sideOf(change) === undefined ? before.words : changeWords(change);
    sums.set(key, { words, kind: change.kind, mm: change.mm + (before?.mm ?? 0), most: mostOf(change) });
  }
  return [...sums.values()].flatMap(({ words, kind, mm, most }) => {
    const [value, max] = [mm / millimetres[units], most / millimetres[units]];
    return mm <= most
      ? []
      : [
          {
            code: 'fitting-too-much',
            severity: 'error' as const,
            path: 'fitting',
            value,
            limits: { min: 0, max, unit: units },
            message: `${inUnit(value, units)} is too much for "${words}". ${whyOf(kind, units)}Beyond ${inUnit(max, units)} measure again and sew another trial bodice.`,
          },
        ];
  });
}

/** What was written, as a message shows it. */
function short(written: unknown): string {
  if (written === undefined || written === null) return 'an empty place';
  if (typeof written === 'object') return 'a group of fields';
  const text = String(written).replace(/[\p{Cc}\p{Cs}]+/gu, ' ');
  return text.length > 40 ? `${text.slice(0, 39)}…` : text === '' ? 'an empty text' : text;
}
