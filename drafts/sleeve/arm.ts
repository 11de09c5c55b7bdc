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
