import type { TurnedRules } from '../../../drafts/index.ts';
import type { PageIssue } from '../messages.ts';
import type { Lesson, TaughtStep } from './lesson.ts';

/** What a step is asked about: one of the numbers it was found from, by its place, or what it comes to. */
export type PointedNumber = number | 'outcome';

/** Where a lesson stands. */
export interface LearnState {
  /** The step that is shown, by its number. */
  readonly step: number;
  readonly pointed: PointedNumber | undefined;
  /** Rules with other values than the draft gives them, as they are written, by number. */
  readonly turned: TurnedRules;
  /** The number of the newest lesson that is wanted. */
  readonly asked: number;
  /** Whether the lesson as the draft has it is no longer that of this body and these choices. */
  readonly stale: boolean;
  /** The last that could be drawn. */
  readonly lesson: Lesson | undefined;
  /** The same with every rule as the draft has it. */
  readonly plain: Lesson | undefined;
  readonly issues: readonly PageIssue[];
}

export const firstStep: LearnState = {
  step: 1,
  pointed: undefined,
  turned: {},
  asked: 0,
  stale: true,
  lesson: undefined,
  plain: undefined,
  issues: [],
};

/** All that can happen in a lesson. */
export type LearnAction =
  | { readonly does: 'go to step'; readonly step: number }
  | { readonly does: 'point at'; readonly pointed: PointedNumber | undefined }
  | { readonly does: 'turn rule'; readonly id: string; readonly value: number | undefined }
  | { readonly does: 'turn no rule' }
  /** The body or the choices are others. */
  | { readonly does: 'begin anew' };

/** What the worker is asked for a lesson, and what it answers. */
export interface LessonRequest {
  readonly turned: TurnedRules;
  /** Whether the lesson as the draft has it is wanted too. */
  readonly plain: boolean;
}

export interface LessonAnswer {
  readonly number: number;
  readonly lesson?: Lesson;
  readonly plain?: Lesson;
  readonly issues: readonly PageIssue[];
}

export const lessonRequest = ({ turned, stale, plain }: LearnState): LessonRequest => ({
  turned,
  plain: stale || plain === undefined,
});

/** A lesson after an action; a new one is asked for, by its number, where other lines come of it. */
export function learnReduce(state: LearnState, action: LearnAction): LearnState {
  switch (action.does) {
    case 'go to step':
      return { ...state, step: within(action.step, state.lesson), pointed: undefined };
    case 'point at':
      return { ...state, pointed: action.pointed };
    case 'turn rule': {
      const { [action.id]: _, ...others } = state.turned;
      const turned = action.value === undefined ? others : { ...others, [action.id]: action.value };
      return { ...state, turned, asked: state.asked + 1 };
    }
    case 'turn no rule':
      return { ...state, turned: {}, asked: state.asked + 1 };
    case 'begin anew':
      return { ...state, asked: state.asked + 1, stale: true };
  }
}

/** A lesson that has been heard; where none could be drawn the last stays, with what stands in the way. */
export function learnHeard(state: LearnState, { number, lesson, plain, issues }: LessonAnswer): LearnState {
  const known = lesson ?? state.lesson;
  return {
    ...state,
    lesson: known,
    plain: plain ?? state.plain,
    stale: state.stale && !(plain && number === state.asked),
    issues,
    step: within(state.step, known),
  };
}

const within = (step: number, lesson: Lesson | undefined): number =>
  Math.min(Math.max(1, Math.round(step)), Math.max(1, lesson?.steps.length ?? step));

export const stepShown = ({ lesson, step }: LearnState): TaughtStep | undefined =>
  lesson?.steps.find(({ number }) => number === step);

/** A step that came to something else because rules were turned, with what it came to before. */
export interface MovedStep {
  readonly step: TaughtStep;
  readonly before: string;
}

/** The steps that moved with the rules that are turned: those of the same title, in their order, that say another amount. */
export function movedSteps({ lesson, plain, turned }: LearnState): readonly MovedStep[] {
  if (!lesson || !plain || Object.keys(turned).length === 0) return [];
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

/** The steps that rest on a step, straight or by way of others, by number. */
export function restingOn(number: number, { steps }: Lesson): ReadonlySet<number> {
  const resting = new Set([number]);
  for (const step of steps)
    if (step.grounds.some((ground) => ground.step !== undefined && resting.has(ground.step)))
      resting.add(step.number);
  return resting;
}
