import { seamFinishes } from '../../pattern/finishes.ts';
import type { SewingStep } from '../../pattern/sewing.ts';
import { seamClasses, stitchTypes } from '../../pattern/stitches.ts';
import { capital } from '../../text/capital.ts';
import { unbroken } from '../../text/length.ts';
import { fineLength } from '../../text/on-one-line.ts';
import type { Unit } from '../../text/units.ts';
import { withLengthsIn } from '../../text/with-lengths-in.ts';
import { quantity } from './quantity.ts';
import { type SeamRow, seamRow, turnRow } from './seam-words.ts';
import { sourceSign } from './sources.ts';
import type { StepFacts } from './step-facts.ts';

/** Everything a step says, ready for any kind of page. */
export interface StepWords {
  readonly number: number;
  readonly title: string;
  /** What earlier steps must have done. */
  readonly ready: readonly string[];
  readonly how: readonly string[];
  /** Notions that are used, with their lengths. */
  readonly uses: readonly string[];
  readonly seams: readonly SeamRow[];
  readonly amounts: readonly AmountWords[];
  /** Stitch, seam class, finish of the raw edges, and allowance. */
  readonly madeWith: readonly string[];
  readonly cautions: readonly string[];
}

export interface AmountWords {
  readonly says: string;
  readonly figure: string;
  /** Where it comes from, as a sign that the list of sources explains. */
  readonly sign: string;
}

/** Puts a step and what was measured for it into words. */
export const stepWords = (
  number: number,
  step: SewingStep,
  facts: StepFacts,
  ready: readonly string[],
  sources: readonly string[],
  units: Unit,
): StepWords => ({
  number,
  title: step.title,
  ready: ready.length > 0 ? [`Ready: ${ready.join('; ')}.`] : [],
  how: step.how.map((sentence) => unbroken(withLengthsIn(sentence, units))),
  uses: facts.notions.map(
    (notion) => `${capital(notion.name)}: ${quantity(notion, units)}; ${withLengthsIn(notion.note, units)}.`,
  ),
  seams: [
    ...facts.seams.map((each) => seamRow(each, units)),
    ...facts.turns.map((each) => turnRow(each, units)),
  ],
  amounts: (step.amounts ?? []).map(({ says, mm, source }) => ({
    says: capital(withLengthsIn(says, units)),
    figure: fineLength(mm, units),
    sign: source ? sourceSign(sources, source) : '',
  })),
  madeWith: madeWith(step, facts, units),
  cautions: step.cautions ?? [],
});

function madeWith(
  { stitch, seamClass, finish }: SewingStep,
  { allowances }: StepFacts,
  units: Unit,
): readonly string[] {
  const parts = [
    ...(stitch ? [`stitch ${stitch}, ${stitchTypes[stitch]}`] : []),
    ...(seamClass ? [`seam class ${seamClass}, ${seamClasses[seamClass]}`] : []),
    ...(finish ? [`finish: ${seamFinishes[finish].says}`] : []),
    ...(allowances.length > 0
      ? [`allowance ${allowances.map((width) => fineLength(width, units)).join(' and ')}`]
      : []),
  ];
  return parts.length > 0 ? [`${capital(parts.join('; '))}.`] : [];
}
