import { flatMapped } from '../../flat-mapped.ts';
import type { Issue } from '../../issue.ts';
import type { SewingCode } from '../../issue-codes/issue-codes.ts';
import type { Condition, SewingStep, State } from '../../pattern/sewing.ts';
import { keyOf, reachedBefore, type Schedule, stepNamed } from './schedule.ts';

/** What must and what must not have been done, at the same place, before something is done. */
interface StateRule {
  /** Each of these, or one of those that stand together. */
  readonly after: readonly (readonly Condition[])[];
  readonly before: readonly Condition[];
}

const rule = (after: readonly (readonly Condition[])[], before: readonly Condition[] = []): StateRule => ({
  after,
  before,
});

/**
 * How the states of a piece follow each other (common practice, no source): each on account of the hand, not of
 * taste, so that no order that breaks one can be sewn.
 */
const rules: Readonly<Record<Condition, StateRule>> = {
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
  tacked: rule([['marked']], ['zip set in']),
  'zip set in': rule([['tacked']]),
};

/** As a sentence says it: “must wait until …”. */
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
  tacked: 'it is tacked shut where the zip goes',
  'zip set in': 'its zip is set in',
};

/** Steps that bring a piece to a state it is not ready for, need what nobody has done, or come when it is too late. */
export function stateFaults(schedule: Schedule): Issue[] {
  return flatMapped(schedule.steps, (step, place) => {
    const done = ({ piece, at }: State, is: Condition): boolean =>
      reachedBefore(schedule, place, piece, is, isOfWholePiece(is) ? undefined : at);
    const tooEarly = (state: State, missing: readonly Condition[]): Issue => {
      const until = missing.map((is) => inWords[is]).join(' or ');
      return fault(
        step,
        place,
        'sewing-too-early',
        `comes too early: ${placed(state)} must wait until ${until}`,
      );
    };
    const tooLate = (state: State, end: Condition): Issue =>
      fault(step, place, 'sewing-too-late', `comes too late for ${placed(state)}: ${inWords[end]} already`);
    return [
      ...flatMapped(step.needs ?? [], (state) =>
        done(state, state.is) ? [] : [tooEarly(state, [state.is])],
      ),
      ...flatMapped(step.brings ?? [], (state) => [
        ...rules[state.is].after
          .filter((ways) => !ways.some((way) => done(state, way)))
          .map((ways) => tooEarly(state, ways)),
        ...rules[state.is].before.filter((end) => done(state, end)).map((end) => tooLate(state, end)),
      ]),
      ...closedOff(schedule, step, place),
    ];
  });
}

/** What later steps do although this one has closed it off. */
function closedOff({ steps, reached }: Schedule, step: SewingStep, place: number): Issue[] {
  return flatMapped(step.closes ?? [], (state) =>
    flatMapped(reached.get(keyOf(state)) ?? [], (at) => {
      const late = steps[at];
      if (at <= place || !late) return [];
      const by = `comes too late: ${stepNamed(place, step)}, has closed off ${placed(state)}`;
      return [fault(late, at, 'sewing-too-late', by)];
    }),
  );
}

const isOfWholePiece = (is: Condition): boolean => is === 'cut' || is === 'marked';

const placed = ({ piece, at }: State): string =>
  at === undefined ? `the ${piece}` : `“${at}” of the ${piece}`;

const fault = (step: SewingStep, place: number, code: SewingCode, what: string): Issue => ({
  code,
  severity: 'error',
  path: step.title,
  message: `The sewing order cannot be followed: ${stepNamed(place, step)}, ${what}.`,
});
