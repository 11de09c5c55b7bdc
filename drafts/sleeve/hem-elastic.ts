import type { Body } from '../../engine/body/body.ts';
import { type ConstructionLog, figure } from '../../engine/pattern/construction-log.ts';
import type { Notion } from '../../engine/pattern/garment.ts';
import type { SleeveStyling } from './choices.ts';
import { sleeveRules as rules } from './rules.ts';

/** The elastic as it will sit on the arm (mm), and as it is cut. */
export interface HemElastic {
  /** Girth of the arm where it sits, mm: the upper arm, or the elbow where the sleeve reaches so far. */
  readonly arm: number;
  readonly finished: number;
  readonly notion: Notion;
  /** What is written on the casing. */
  readonly text: string;
}

/** The elastic in the sleeve hem: a little shorter than the arm, and cut with an overlap to join it. */
export function hemElastic(body: Body, styling: SleeveStyling, log: ConstructionLog): HemElastic {
  const [where, arm] =
    styling.sleeve === 'long puff'
      ? (['elbow girth', body.size.elbowGirth] as const)
      : (['upper arm girth', body.size.upperArmGirth] as const);
  const finished =
    styling.hemElastic === 'auto'
      ? log.mm(
          'Hem elastic, finished girth',
          `${where} ${figure(arm)} - ${rules.elasticLess.value}`,
          arm - rules.elasticLess.value,
          rules.elasticLess,
        )
      : log.mm('Hem elastic, finished girth', 'as chosen', styling.hemElastic, 'styling');
  const length = log.mm(
    'Hem elastic, cut',
    `${figure(finished)} + overlap ${rules.elasticOverlap.value}`,
    finished + rules.elasticOverlap.value,
    rules.elasticOverlap,
  );
  const note = `${styling.elasticWidth} mm wide; try it round the arm before sewing, it must not bind`;
  return {
    arm,
    finished,
    notion: { name: 'sleeve elastic', count: 2, length, note },
    text: `elastic: cut ${figure(length)} mm, lapped to ${figure(finished)} mm`,
  };
}
