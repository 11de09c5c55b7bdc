import type { Issue } from '../../issue.ts';
import type { Condition, State } from '../../pattern/sewing.ts';
import { keyOf, reachedBefore, type Schedule, stepNamed } from './schedule.ts';

/** What must and what must not have been done, at the same place, before something is done. */
interface Rule {
  /** Each of these, or one of those that stand together. */
  readonly after: readonly (readonly Condition[])[];
  readonly before: readonly Condition[];
}

const rule = (after: readonly (readonly Condition[])[], before: readonly Condition[] = []): Rule => ({
  after,
  before,
});

/** How the states of a piece follow each other (common practice, no source): each on account of the hand, not of
 * taste, so that no order that breaks one can be sewn. */
const rules: Readonly<Record<Condition, Rule>> = {
  cut: rule([]),
  marked: rule([['cut']]),
  'stay-stitched': rule([['cut']]),
  folded: rule([['marked']]),
  'rows stitched': rule([['marked']], ['gathered']),
  gathered: rule([['rows stitched']]),
  'buttonholes made': rule([['marked']], ['casing stitched']),
  'casing stitched': rule([['marked']]),
  'opening left': rule([['marked']], ['threaded', 'casing closed']),
  threaded: rule([['casing stitched'], ['buttonholes made', 'opening left']], ['casing closed']),
  'casing closed': rule([['threaded']]),
};

/** As a sentence says it: “before its …”. */
const inWords: Readonly<Record<Condition, string>> = {
  cut: 'it is cut out',
  marked: 'it is marked',
  'stay-stitched': 'it is stay-stitched',
  folded: 'it is folded',
  'rows stitched': 'its gathering rows are stitched',
  gathered: 'it is gathered',
  'buttonholes made': 'its buttonholes are made',
  'casing stitched': 'its casing is stitched',
  'opening left': 'an opening is left',
  threaded: 'its casing is threaded',
  'casing closed': 'its casing is closed',
};

const wholePiece = (is: Condition): boolean => is === 'cut' || is === 'marked';

/** Steps that bring a piece to a state it is not ready for, need what nobody has done, or come when it is too late. */
export function stateFaults(schedule: Schedule): Issue[] {
  return schedule.steps.flatMap((step, place) => {
    const said = stepNamed(place, step);
    const known = (piece: string, is: Condition, at: string | undefined): boolean =>
      reachedBefore(schedule, place, piece, is, wholePiece(is) ? undefined : at);
    const unready = (piece: string, missing: readonly Condition[], at: string | undefined): Issue =>
      fault('not-ready', step.title, `${upper(said)}, comes too early: ${of(piece, at)} must wait until`, [
        missing.map((is) => inWords[is]).join(' or '),
      ]);
    const brought = (step.brings ?? []).flatMap(({ piece, is, at }) => [
      ...rules[is].after.flatMap((ways) =>
        ways.some((way) => known(piece, way, at)) ? [] : [unready(piece, ways, at)],
      ),
      ...rules[is].before.flatMap((end) =>
        known(piece, end, at)
          ? [
              fault('too-late', step.title, `${upper(said)}, comes too late for ${of(piece, at)}:`, [
                `${inWords[end]} already`,
              ]),
            ]
          : [],
      ),
    ]);
    const needed = (step.needs ?? []).flatMap(({ piece, is, at }) =>
      known(piece, is, at) ? [] : [unready(piece, [is], at)],
    );
    return [...brought, ...needed, ...closedOff(schedule, place)];
  });
}

/** What later steps do although this one has closed it off. */
function closedOff({ steps, reached }: Schedule, place: number): Issue[] {
  const step = steps[place];
  if (!step?.closes) return [];
  return step.closes.flatMap((state) =>
    (reached.get(keyOf(state)) ?? []).flatMap((later) => {
      const late = steps[later];
      if (later <= place || !late) return [];
      const closed = `${upper(stepNamed(later, late))}, comes too late: ${stepNamed(place, step)}, closes off`;
      return [fault('too-late', late.title, closed, [placed(state)])];
    }),
  );
}

const placed = ({ piece, at }: State): string => of(piece, at);

const of = (piece: string, at: string | undefined): string =>
  at === undefined ? `the ${piece}` : `the ${piece} at “${at}”`;

const upper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const fault = (code: string, path: string, begins: string, ends: readonly string[]): Issue => ({
  code: `sewing-${code}`,
  severity: 'error',
  path,
  message: `${begins} ${ends.join('')}.`,
});
