import { type FittedLevel, type FittingChange, fittedLevels } from '../body/fitting.ts';
import { type Evaluation, evaluate } from '../evaluate.ts';
import type { Issue, Result } from '../issue.ts';
import type { Draft } from '../pattern/draft.ts';
import { millimetres, unitNames } from '../text/units.ts';
import { notAltered, plainAlterations, seamChanges, type Wanted } from './alterations.ts';
import { draftSize } from './draft-sizes.ts';
import type { NearSize, Off } from './nearest.ts';

/** A size of a chart altered for one body, beside what would be drafted from her own measurements. */
export interface BroughtHome {
  readonly changes: readonly FittingChange[];
  readonly girths: readonly HomeGirth[];
  /** What no change of a fitting brings home. */
  readonly left: readonly Off[];
}

/** A finished girth, mm: from her own measurements, of the size as it is, and of the size altered. */
export interface HomeGirth {
  readonly level: string;
  readonly hers: number;
  readonly size: number;
  readonly altered: number;
}

/** Seams are set so often anew by what the girths came out at: one taken in at one level runs on into the next. */
const ROUNDS = 3;

/**
 * The alterations, of those that a fitting knows, that bring a size of a chart to a body, and how near: both are drafted,
 * and the finished girths compared. Fails where either cannot be drafted.
 */
export function bringHome(
  draft: Draft,
  near: NearSize,
  herData: unknown,
  styling: object,
): Result<BroughtHome> {
  const hers = evaluate(draft, herData, { ...styling, ...near.of.styling });
  if (!hers.ok) return hers;
  const size = draftSize(draft, near.of, styling);
  if (!size.ok) return size;
  const plain = plainAlterations(near.off);
  const brought = seamsSet(draft, near, styling, plain, hers.value, size.value);
  // A size may not take all of them together: then its seams alone, and the rest is named.
  return brought.ok || plain.length === 0
    ? brought
    : seamsSet(draft, near, styling, [], hers.value, size.value);
}

/** A size with these changes, its seams set anew by what its girths come out at. Fails where it cannot be drafted with them. */
function seamsSet(
  draft: Draft,
  near: NearSize,
  styling: object,
  plain: readonly FittingChange[],
  hers: Evaluation,
  size: Evaluation,
): Result<BroughtHome> {
  let wanted: Wanted = apart(hers, size);
  let best = { changes: [] as readonly FittingChange[], made: size };
  for (let round = 0; round < ROUNDS; round++) {
    const changes = [...plain, ...seamChanges(wanted)];
    const made = altered(draft, near, changes, styling);
    if (!made.ok) return round === 0 ? made : home(hers, size, best, near, made.issues);
    if (round === 0 || worst(hers, made.value) < worst(hers, best.made)) best = { changes, made: made.value };
    const still = apart(hers, made.value);
    wanted = Object.fromEntries(levels.map((level) => [level, (wanted[level] ?? 0) + (still[level] ?? 0)]));
  }
  return home(hers, size, best, near, []);
}

const levels = [...new Set(Object.values(fittedLevels).flat())] as readonly FittedLevel[];

const finishedAt = ({ report }: Evaluation, level: string): number | undefined =>
  report.girths.find((girth) => girth.level === level)?.finished;

/** How much larger her girths are than those of another draft. */
const apart = (hers: Evaluation, other: Evaluation): Wanted =>
  Object.fromEntries(
    levels.map((level) => [level, (finishedAt(hers, level) ?? 0) - (finishedAt(other, level) ?? 0)]),
  );

const worst = (hers: Evaluation, other: Evaluation): number =>
  Math.max(...Object.values(apart(hers, other)).map(Math.abs));

function altered(
  draft: Draft,
  { of }: NearSize,
  changes: readonly FittingChange[],
  styling: object,
): Result<Evaluation> {
  const unit = unitNames.find((name) => name === of.body.units) ?? 'mm';
  const fitting = changes.map((change) => {
    const by = change.mm / millimetres[unit];
    return 'seam' in change
      ? { [change.kind]: change.seam, level: change.level, by }
      : { [change.kind]: by, ...(change.side && { side: change.side }) };
  });
  return draftSize(draft, { ...of, body: { ...of.body, fitting } }, styling);
}

function home(
  hers: Evaluation,
  size: Evaluation,
  { changes, made }: { readonly changes: readonly FittingChange[]; readonly made: Evaluation },
  near: NearSize,
  issues: readonly Issue[],
): Result<BroughtHome> {
  const girths = hers.report.girths.flatMap(({ level, finished }): readonly HomeGirth[] => {
    const [plain, fitted] = [finishedAt(size, level), finishedAt(made, level)];
    return plain === undefined || fitted === undefined
      ? []
      : [{ level, hers: finished, size: plain, altered: fitted }];
  });
  return { ok: true, value: { changes, girths, left: notAltered(near.off, changes) }, issues };
}
