import type { TurnedRules } from '../../../../drafts/index.ts';
import type { OwnState } from '../../own-state.ts';
import type { PageIssue } from '../../page-issue.ts';
import type { Lesson, TaughtDrawing, TaughtStep } from './lesson.ts';

/** What a step is asked about: one of the numbers it was found from, by its place, or what it comes to. */
export type PointedNumber = number | 'outcome';

/** Where a lesson stands. */
export interface Learnt {
  /** The step that is shown, by its number. */
  readonly step: number;
  readonly pointed: PointedNumber | undefined;
  /** The drawing that is to be seen, where another is than goes with the step. */
  readonly on: string | undefined;
  /** Rules with other values than the draft gives them, as they are written, by number. */
  readonly turned: TurnedRules;
  /** What the newest lesson with turned rules was asked by. */
  readonly answered: string;
  /** The last of these that could be drawn. */
  readonly lesson: Lesson | undefined;
  readonly issues: readonly PageIssue[];
}

export type Learning =
  | { readonly does: 'go to step'; readonly step: number }
  | { readonly does: 'point at'; readonly pointed: PointedNumber | undefined }
  | { readonly does: 'show drawing'; readonly on: string }
  /** Without a value: as the draft has it. */
  | { readonly does: 'turn rule'; readonly id: string; readonly value: number | undefined }
  | { readonly does: 'turn no rule' };

export const learnt: OwnState<Learnt, Learning> = {
  empty: {
    step: 1,
    pointed: undefined,
    on: undefined,
    turned: {},
    answered: '',
    lesson: undefined,
    issues: [],
  },
  reduce: (own, action) => {
    switch (action.does) {
      case 'go to step':
        return { ...own, step: Math.max(1, action.step), pointed: undefined, on: undefined };
      case 'point at':
        return { ...own, pointed: action.pointed, on: undefined };
      case 'show drawing':
        return { ...own, on: action.on };
      case 'turn rule': {
        const { [action.id]: _, ...others } = own.turned;
        return turnedTo(own, action.value === undefined ? others : { ...others, [action.id]: action.value });
      }
      case 'turn no rule':
        return turnedTo(own, {});
    }
  },
  hear: (own, answer) =>
    answer.kind === 'lesson'
      ? { ...own, answered: answer.key, lesson: answer.lesson ?? own.lesson, issues: answer.issues }
      : own,
};

/** With rules turned so. Once none is turned, what was drawn with turned ones is of no more use. */
export const turnedTo = (own: Learnt, turned: TurnedRules): Learnt =>
  turned === own.turned
    ? own
    : Object.keys(turned).length > 0
      ? { ...own, turned }
      : { ...own, turned, lesson: undefined, issues: [] };

/** A lesson as it is shown: with the rules as they are turned, and as the draft has them. */
export interface ShownLesson {
  readonly lesson: Lesson;
  readonly plain: Lesson;
  readonly turned: TurnedRules;
  readonly moved: LessonMoved;
}

/** What turned rules have moved. */
export interface LessonMoved {
  /** Steps that come to something else. */
  readonly steps: readonly MovedStep[];
  /** Steps that draw otherwise, by number. */
  readonly drawn: ReadonlySet<number>;
  /** The drawings on which they do. */
  readonly drawings: ReadonlySet<string>;
}

/** What moved from one lesson to another of the same garment. */
export const movedBetween = (plain: Lesson, lesson: Lesson): LessonMoved => ({
  steps: movedSteps(plain, lesson),
  ...movedLines(plain, lesson),
});

/** A step that came to something else because rules were turned, with what it came to before. */
export interface MovedStep {
  readonly step: TaughtStep;
  readonly before: string;
}

/** The steps that moved with the rules that are turned: those of the same title, in their order, that say another amount. */
function movedSteps(plain: Lesson, lesson: Lesson): readonly MovedStep[] {
  if (lesson === plain) return [];
  const before = byTitle(plain);
  const seen = new Map<string, number>();
  return lesson.steps.flatMap((step) => {
    const nth = seen.get(step.title) ?? 0;
    seen.set(step.title, nth + 1);
    const was = before.get(step.title)?.[nth]?.amount;
    return was !== undefined && was !== step.amount ? [{ step, before: was }] : [];
  });
}

function byTitle({ steps }: Lesson): ReadonlyMap<string, readonly TaughtStep[]> {
  const found = new Map<string, TaughtStep[]>();
  for (const step of steps) {
    const same = found.get(step.title);
    if (same) same.push(step);
    else found.set(step.title, [step]);
  }
  return found;
}

/** The steps that draw otherwise because rules were turned, by number, and the drawings on which they do. */
function movedLines(plain: Lesson, lesson: Lesson): Pick<LessonMoved, 'drawn' | 'drawings'> {
  const [drawn, drawings] = [new Set<number>(), new Set<string>()];
  if (lesson === plain) return { drawn, drawings };
  const before = new Set(
    plain.steps.flatMap(({ title, draws }) => draws.map((drawing) => drawnAs(title, drawing))),
  );
  for (const { number, title, draws } of lesson.steps)
    for (const drawing of draws)
      if (!before.has(drawnAs(title, drawing))) {
        drawn.add(number);
        drawings.add(drawing.on);
      }
  return { drawn, drawings };
}

/** A hundredth of a mm is nothing that has moved. */
const drawnAs = (title: string, { on, lines, points }: TaughtDrawing): string => {
  const places = [...lines.flatMap(({ reach }) => reach.flat()), ...points.flatMap(({ x, y }) => [x, y])];
  return `${title} ${on} ${places.map((place) => Math.round(place * 100)).join(' ')}`;
};

/** The steps that rest on a step, straight or by way of others, by number. */
export function restingOn(number: number, { steps }: Lesson): ReadonlySet<number> {
  const resting = new Set([number]);
  for (const step of steps)
    if (step.grounds.some((ground) => ground.step !== undefined && resting.has(ground.step)))
      resting.add(step.number);
  return resting;
}
