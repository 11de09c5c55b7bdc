import type { MeasurementName } from '../../../../drafts/index.ts';
import type { OwnState } from '../../own-state.ts';
import type { StudyAnswer } from '../../requests/study.ts';

export interface Measuring {
  /** The measurement whose field has the focus, or had it last. */
  readonly at: MeasurementName | undefined;
  /** What was found out of a body by looking closely. */
  readonly studied: StudyAnswer | undefined;
}

export interface MeasuringAction {
  readonly does: 'attend';
  readonly at: MeasurementName;
}

export const measuring: OwnState<Measuring, MeasuringAction> = {
  empty: { at: undefined, studied: undefined },
  reduce: (own, { at }) => (own.at === at ? own : { ...own, at }),
  hear: (own, answer) => (answer.kind === 'studied' ? { ...own, studied: answer } : own),
};
