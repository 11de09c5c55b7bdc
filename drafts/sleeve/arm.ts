import type { Mm } from '../../engine/pattern/quantity.ts';
import { sleeveRules as rules } from './rules.ts';
import type { SleeveTable } from './sleeve.ts';

/** A sleeve below its cap: how long it is and how wide at the hem; a long one bends at the elbow. */
export interface Arm {
  /** Width at the underarm, fitted. */
  readonly width: Mm;
  /** From the underarm to the hem. */
  readonly length: Mm;
  /** Width at the hem of a plain sleeve. */
  readonly hem: Mm;
  /** Where a sleeve to the wrist bends: how far below the underarm, and how wide there. */
  readonly elbow: { readonly below: Mm; readonly width: Mm } | undefined;
}

/** Measures out the sleeve below its cap, which stands `capHeight` high. */
export function drawArm(table: SleeveTable, capHeight: number): Arm {
  const { size, choice, styling } = table;
  const width = table.mm`Sleeve width, fitted: upper arm girth ${size.upperArmGirth} + ease ${choice.upperArmEase}`;
  const { sleeve } = styling;
  if (sleeve !== 'plain') {
    const usual = sleeve === 'long puff' ? rules.longPuffLength : rules.puffLength;
    const length =
      choice.sleeveLength === 'auto'
        ? table.mm`Sleeve seam: ${usual}; a ${sleeve} sleeve`
        : table.mm`Sleeve seam: ${choice.sleeveLength}; as chosen`;
    return { width, length, hem: width, elbow: undefined };
  }
  const cap = table.measured('Cap height', 'on the drawing', capHeight);
  const toWrist = table.mm`Sleeve seam to the wrist: outer arm length ${size.outerArmLength} - ${cap}`;
  const toElbow = table.mm`Elbow below the underarm: ${toWrist} / 2 - ${rules.elbowUp}`;
  const atElbow = table.mm`Sleeve width at the elbow: elbow girth ${size.elbowGirth} + ${rules.elbowEase}, at most ${width}`;
  const atWrist = table.mm`Sleeve width at the wrist: wrist girth ${size.wristGirth} + ${rules.wristEase}, at most ${atElbow}`;
  if (styling.sleeveTo === 'wrist') {
    const length =
      choice.sleeveLength === 'auto' ? toWrist : table.mm`Sleeve seam: ${choice.sleeveLength}; as chosen`;
    const bends = length.value > toElbow.value + 2 * rules.elbowStretch.value;
    return { width, length, hem: atWrist, elbow: bends ? { below: toElbow, width: atElbow } : undefined };
  }
  const usual =
    styling.sleeveTo === 'elbow'
      ? toElbow
      : table.mm`Short sleeve seam: ${rules.shortLength}, at most ${toElbow}`;
  const length =
    choice.sleeveLength === 'auto'
      ? usual
      : table.mm`Sleeve seam: ${choice.sleeveLength}, at most ${toElbow}; as chosen`;
  const hem = table.mm`Sleeve width at the hem: ${width} - (${width} - ${atElbow}) x ${length} / ${toElbow}; it tapers to the elbow`;
  return { width, length, hem, elbow: undefined };
}
