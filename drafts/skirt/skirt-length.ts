import type { Mm } from '../../engine/pattern/quantity.ts';
import type { SkirtTable } from './choices.ts';
import { skirtRules as rules } from './rules.ts';

const heightOf = { knee: rules.kneeHeight, calf: rules.calfHeight, ankle: rules.ankleHeight } as const;

/** The length of the skirt at the centre front, from the waist to the hem. */
export const skirtLength = ({ choice, styling, size, mm }: SkirtTable): Mm =>
  choice.skirtLength === 'auto'
    ? mm`Skirt length: waist height ${size.waistHeight} - ${heightOf[styling.skirtTo]} of stature ${size.stature}; to the ${styling.skirtTo}`
    : mm`Skirt length: ${choice.skirtLength}; as chosen`;
