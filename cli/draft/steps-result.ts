import type { Step } from '../../engine/pattern/garment.ts';
import { type Ground, type QuantityUnit, writtenValue } from '../../engine/pattern/quantity.ts';
import type { Reason } from '../../engine/pattern/reasons.ts';
import { stepText } from '../../engine/pattern/step-text.ts';
import type { GroundResult, ReasonResult, StepResult } from '../results/construction.ts';

/** Units as they are printed: angles in degrees. */
const printed = {
  mm: 'mm',
  rad: 'degrees',
  ratio: 'ratio',
  'per mm': 'per mm',
} as const satisfies Readonly<Record<QuantityUnit, string>>;

/**
 * The construction as data (drafts/sentences.md): each step with its formula, what that comes to, and what it was found
 * from. Lengths are mm, angles degrees; a step that only says something has no formula and no value.
 */
export const stepsResult = (steps: readonly Step[]): readonly StepResult[] => steps.map(stepResult);

const stepResult = (step: Step): StepResult => ({
  number: step.number,
  heading: step.heading ?? null,
  title: step.title,
  text: stepText(step, 'mm'),
  formula: step.formula ?? null,
  ...amount(step),
  source: step.source,
  from: step.from.map(groundResult),
});

/** A measurement, a choice, a rule, a change of the fitting, or an earlier step, by its name, and its value. */
function groundResult(ground: Ground): GroundResult {
  const { origin } = ground;
  switch (origin.kind) {
    case 'measurement':
      return { measurement: origin.measurement, ...amount(ground) };
    case 'rule':
      return { rule: origin.id, ...amount(ground) };
    case 'step':
      return { step: origin.number, ...amount(ground) };
    case 'choice':
      return { choice: ground.name, ...amount(ground) };
    case 'fitting':
      return { fitting: ground.name, ...amount(ground) };
  }
}

const amount = ({
  value,
  unit,
}: {
  readonly value?: number | undefined;
  readonly unit?: QuantityUnit | undefined;
}) =>
  value === undefined || unit === undefined
    ? { value: null, unit: null }
    : { value: writtenValue({ value, unit }), unit: printed[unit] };

/** What a step rests on, as data: each ground with its own grounds, those told before without. */
export const reasonResult = ({ ground, step, from }: Reason): ReasonResult => ({
  ...(step ? { title: step.title, text: stepText(step, 'mm'), source: step.source } : {}),
  ...groundResult(ground),
  from: from.map(reasonResult),
});
