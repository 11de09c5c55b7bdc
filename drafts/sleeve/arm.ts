import { point } from '../../engine/geometry/point.ts';
import type { Mm } from '../../engine/pattern/quantity.ts';
import type { PlainSleeveTable } from './choices.ts';
import type { FittedCap } from './fitted-cap.ts';
import { sleeveRules as rules } from './rules.ts';

/** A plain sleeve below its cap: how long it is, and how wide; one to the wrist bends at the elbow. */
export interface Arm {
  /** Width at the underarm. */
  readonly width: Mm;
  /** From the underarm to the hem. */
  readonly length: Mm;
  /** Width at the hem. */
  readonly hem: Mm;
  /** Where it bends: how far below the underarm, and how wide there. */
  readonly elbow: { readonly below: Mm; readonly width: Mm } | undefined;
}

/** Measures out a plain sleeve below its cap. */
export function drawArm(table: PlainSleeveTable, { width, height }: FittedCap): Arm {
  const { size, choice, styling } = table;
  const toWrist = table.mm`Sleeve seam to the wrist: outer arm length ${size.outerArmLength} - cap height ${height}`;
  const toElbow = table.mm`Elbow below the underarm: seam to the wrist ${toWrist} / 2 - ${rules.elbowUp}`;
  const atElbow = table.mm`Sleeve width at the elbow: elbow girth ${size.elbowGirth} + ${rules.elbowEase}, at most width at the underarm ${width}`;
  const usual =
    styling.sleeveTo === 'wrist'
      ? toWrist
      : styling.sleeveTo === 'elbow'
        ? toElbow
        : table.mm`Short sleeve seam: ${rules.shortLength}, at most to the elbow ${toElbow}`;
  const length =
    choice.sleeveLength === 'auto'
      ? usual
      : table.mm`Sleeve seam: ${choice.sleeveLength}, at most ${styling.sleeveTo === 'wrist' ? toWrist : toElbow}; as chosen`;
  const bends = styling.sleeveTo === 'wrist' && length.value > toElbow.value + 2 * rules.elbowStretch.value;
  if (!bends) {
    const hem = table.mm`Sleeve width at the hem: at the underarm ${width} - (at the underarm ${width} - at the elbow ${atElbow}) x seam ${length} / to the elbow ${toElbow}, at least width there ${atElbow}; it tapers to the elbow`;
    return { width, length, hem, elbow: undefined };
  }
  const hem = table.mm`Sleeve width at the wrist: wrist girth ${size.wristGirth} + ${rules.wristEase}, at most width at the elbow ${atElbow}`;
  return { width, length, hem, elbow: { below: toElbow, width: atElbow } };
}

/** Marks how long the sleeve is, straight down, and how wide at each level. */
export function markArm({ dimension }: Pick<PlainSleeveTable, 'dimension'>, arm: Arm): void {
  const { width, length, hem, elbow } = arm;
  const across = (of: Mm, y: number): void =>
    dimension('sleeve', of, point(-of.value / 2, y), point(of.value / 2, y));
  across(width, 0);
  across(hem, length.value);
  const x = hem.value / 2;
  dimension('sleeve', length, point(x, 0), point(x, length.value));
  if (!elbow) return;
  across(elbow.width, elbow.below.value);
  dimension('sleeve', elbow.below, point(0, 0), point(0, elbow.below.value));
}
