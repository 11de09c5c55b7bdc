import type { Notion } from '../../engine/pattern/garment.ts';
import { figure } from '../../engine/text/figure.ts';
import type { PuffSleeveTable } from './choices.ts';
import { sleeveRules as rules } from './rules.ts';

/** The elastic as it will sit on the arm (mm), and as it is cut. */
export interface HemElastic {
  readonly finished: number;
  /** Girth of the arm where it sits, mm: the upper arm, or the elbow where the sleeve reaches so far. */
  readonly arm: number;
  /** What is written on the casing. */
  readonly text: string;
  readonly notion: Notion;
}

/** The elastic in the sleeve hem: a little shorter than the arm is there, and cut with an overlap to join it. */
export function hemElastic(table: PuffSleeveTable): HemElastic {
  const { size, choice, styling } = table;
  const finished =
    choice.hemElastic !== 'auto'
      ? table.mm`Hem elastic, finished girth: ${choice.hemElastic}; as chosen`
      : styling.sleeve === 'long puff'
        ? table.mm`Hem elastic, finished girth: elbow girth ${size.elbowGirth} - ${rules.elasticLess}`
        : table.mm`Hem elastic, finished girth: upper arm girth ${size.upperArmGirth} - ${rules.elasticLess}`;
  const arm = styling.sleeve === 'long puff' ? size.elbowGirth : size.upperArmGirth;
  const length = table.mm`Hem elastic, cut: ${finished} + overlap ${rules.elasticOverlap}`;
  const note = `${styling.elasticWidth} mm wide; try it round the arm before sewing, it must not bind`;
  return {
    arm: arm.value,
    finished: finished.value,
    text: `elastic: cut ${figure(length.value)} mm, lapped to ${figure(finished.value)} mm`,
    notion: { name: 'sleeve elastic', count: 2, length: length.value, finished: finished.value, note },
  };
}
